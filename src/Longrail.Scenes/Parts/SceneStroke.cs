using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the stroke.</summary>
public sealed record SceneStroke
{
    /// <summary>The id of the ball that is struck.</summary>
    public string? Ball { get; internal set; }

    /// <summary>Where the stick points.</summary>
    public SceneAim? Aim { get; internal set; }

    /// <summary>The ball's speed as it leaves the tip.</summary>
    public Quantity? Speed { get; internal set; }

    /// <summary>The stick's speed just before contact.</summary>
    public Quantity? CueSpeed { get; internal set; }

    /// <summary>Where the tip strikes.</summary>
    public SceneTip? Tip { get; internal set; }

    /// <summary>How far the butt is raised.</summary>
    public Quantity? Elevation { get; internal set; }

    internal SceneStroke Copy() => this with { Aim = Aim?.Copy(), Tip = Tip is null ? null : Tip with { } };
}
