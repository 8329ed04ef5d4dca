using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the cloth.</summary>
public sealed record SceneCloth
{
    /// <summary>The name of a state of the cloth.</summary>
    public string? State { get; internal set; }

    /// <summary>Coulomb coefficient of a skidding ball.</summary>
    public Quantity? SlidingFriction { get; internal set; }

    /// <summary>Deceleration of a rolling ball over gravity.</summary>
    public Quantity? RollingFriction { get; internal set; }

    /// <summary>Deceleration of the spin about the vertical axis.</summary>
    public Quantity? SpinDecay { get; internal set; }
}
