namespace Longrail.Scenes.Units;

/// <summary>What a quantity of a scene is counted in.</summary>
public enum RelativeUnit : byte
{
    /// <summary>SI units: nothing else in the scene is needed to understand it.</summary>
    None,

    /// <summary>The radius of the ball concerned.</summary>
    BallRadius,

    /// <summary>The diameter of the ball concerned.</summary>
    BallDiameter,

    /// <summary>The width of the cue's tip, and it is the shaft's axis that is shifted.</summary>
    TipWidth,

    /// <summary>Diamonds of the table, along or across as the field says.</summary>
    Diamond,
}
