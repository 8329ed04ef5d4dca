using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the table.</summary>
public sealed record SceneTable
{
    /// <summary>The name of a table preset.</summary>
    public string? Preset { get; internal set; }

    /// <summary>Playing length, nose to nose.</summary>
    public Quantity? Length { get; internal set; }

    /// <summary>Playing width, nose to nose.</summary>
    public Quantity? Width { get; internal set; }

    /// <summary>Distance of the sights behind the nose line.</summary>
    public Quantity? SightSetback { get; internal set; }

    /// <summary>Acceleration of free fall.</summary>
    public Quantity? Gravity { get; internal set; }

    /// <summary>The pockets.</summary>
    public ScenePockets? Pockets { get; internal set; }

    internal SceneTable Copy() => this with { Pockets = Pockets?.Copy() };
}
