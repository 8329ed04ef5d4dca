using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about a ball that is already moving.</summary>
public sealed record SceneLaunch
{
    /// <summary>The id of the ball.</summary>
    public string? Ball { get; internal set; }

    /// <summary>Its velocity along the table and across.</summary>
    public Quantity[]? Velocity { get; internal set; }

    /// <summary>Its spin about the three axes.</summary>
    public Quantity[]? Spin { get; internal set; }
}
