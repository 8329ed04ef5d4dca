namespace Longrail.Physics.Shots.Readings;

/// <summary>How places along a cushion are numbered. Most arguments about diamond systems are about this.</summary>
public enum DiamondNumbering
{
    /// <summary>At the nose: the number opposite the point of the nose that the ball touches, which is the number of
    /// the ball's centre at the touch.</summary>
    Nose,

    /// <summary>Through the sight: the number where the line of the ball's centre, drawn on over the rail, crosses the
    /// row of sights.</summary>
    Sight,

    /// <summary>At the nose, in tenths: ten to a diamond.</summary>
    Tens,
}
