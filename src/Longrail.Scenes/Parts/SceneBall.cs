using Longrail.Physics.Equipment;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about one ball.</summary>
public sealed record SceneBall
{
    /// <summary>Its name within the scene.</summary>
    public string? Id { get; internal set; }

    /// <summary>Distance of its centre from the head cushion's nose line.</summary>
    public Quantity? X { get; internal set; }

    /// <summary>Distance of its centre from the right cushion's nose line.</summary>
    public Quantity? Y { get; internal set; }

    /// <summary>The same as <see cref="X"/> in diamonds.</summary>
    public Quantity? Along { get; internal set; }

    /// <summary>The same as <see cref="Y"/> in diamonds.</summary>
    public Quantity? Across { get; internal set; }

    /// <summary>The cushion that it touches; stands instead of the coordinate across that cushion.</summary>
    public CushionName? FrozenTo { get; internal set; }

    /// <summary>Its own diameter, if it differs from the set's.</summary>
    public Quantity? Diameter { get; internal set; }

    /// <summary>Its own mass, if it differs from the set's.</summary>
    public Quantity? Mass { get; internal set; }

    /// <summary>Its stripe, if it has one.</summary>
    public SceneStripe? Stripe { get; internal set; }

    internal SceneBall Copy() => this with { Stripe = Stripe is null ? null : Stripe with { } };
}
