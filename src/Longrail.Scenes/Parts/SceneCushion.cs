using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the cushions.</summary>
public sealed record SceneCushion
{
    /// <summary>"yielding" or "impulse".</summary>
    public string? Law { get; internal set; }

    /// <summary>Energetic restitution along the contact normal.</summary>
    public Quantity? Restitution { get; internal set; }

    /// <summary>Coulomb coefficient between ball and cushion.</summary>
    public Quantity? Friction { get; internal set; }

    /// <summary>Height of the nose above the bed.</summary>
    public Quantity? NoseHeight { get; internal set; }

    /// <summary>Duration of a straight contact under the yielding law.</summary>
    public Quantity? ContactTime { get; internal set; }
}
