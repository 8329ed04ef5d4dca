using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about where the tip strikes.</summary>
public sealed record SceneTip
{
    /// <summary>To the right of the centre, seen along the stick.</summary>
    public Quantity? Right { get; internal set; }

    /// <summary>Above the centre.</summary>
    public Quantity? Above { get; internal set; }
}
