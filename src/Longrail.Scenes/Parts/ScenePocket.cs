using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the shape of one kind of pocket.</summary>
public sealed record ScenePocket
{
    /// <summary>Distance between the points where nose line and facing would meet.</summary>
    public Quantity? Mouth { get; internal set; }

    /// <summary>Angle between nose line and facing, through the rubber.</summary>
    public Quantity? CutAngle { get; internal set; }

    /// <summary>Radius of the rounding between nose line and facing.</summary>
    public Quantity? JawRadius { get; internal set; }

    /// <summary>Distance of the drop edge behind the mouth line.</summary>
    public Quantity? Shelf { get; internal set; }

    /// <summary>Radius of the drop edge.</summary>
    public Quantity? DropRadius { get; internal set; }
}
