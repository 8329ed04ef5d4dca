using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the cue.</summary>
public sealed record SceneCue
{
    /// <summary>The name of a cue preset.</summary>
    public string? Preset { get; internal set; }

    /// <summary>Mass of the whole cue.</summary>
    public Quantity? Mass { get; internal set; }

    /// <summary>Width of the tip.</summary>
    public Quantity? TipDiameter { get; internal set; }

    /// <summary>Radius of the tip's dome.</summary>
    public Quantity? TipRadius { get; internal set; }

    /// <summary>Effective mass of the shaft's end.</summary>
    public Quantity? EndMass { get; internal set; }

    /// <summary>Restitution of tip on ball.</summary>
    public Quantity? TipRestitution { get; internal set; }

    /// <summary>Coulomb coefficient of the tip.</summary>
    public Quantity? TipFriction { get; internal set; }
}
