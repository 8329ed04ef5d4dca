using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the balls in general.</summary>
public sealed record SceneBallSet
{
    /// <summary>The name of a state of the balls.</summary>
    public string? State { get; internal set; }

    /// <summary>Diameter.</summary>
    public Quantity? Diameter { get; internal set; }

    /// <summary>Mass.</summary>
    public Quantity? Mass { get; internal set; }

    /// <summary>Restitution of ball on ball.</summary>
    public Quantity? Restitution { get; internal set; }

    /// <summary>Friction of ball on ball.</summary>
    public SceneBallFriction? Friction { get; internal set; }

    internal SceneBallSet Copy() => this with { Friction = Friction is null ? null : Friction with { } };
}
