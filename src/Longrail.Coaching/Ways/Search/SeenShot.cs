using System.Runtime.CompilerServices;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Ways.Search;

/// <summary>What the search keeps of one shot.</summary>
internal struct SeenShot
{
    /// <summary>Places along the edge that are kept: one more than the most cushions.</summary>
    internal const int Places = 4;

    /// <summary>Direction in which the cue ball leaves the tip, radians.</summary>
    internal double Direction;

    /// <summary>How it ended.</summary>
    internal ShotFate Fate;

    /// <summary>The other ball, where one is part of the fate; otherwise -1.</summary>
    internal int Other;

    /// <summary>The cue ball's cushions before the meeting, or before whatever came instead.</summary>
    internal CushionList CueBall;

    /// <summary>The object ball's cushions. When it goes down, without those that run into the pocket.</summary>
    internal CushionList ObjectBall;

    /// <summary>Every cushion that the object ball touches, in order; one cushion twice in a row counts once.</summary>
    internal CushionList AllTouched;

    /// <summary>Where the object ball goes down; meaningful for <see cref="ShotFate.Made"/>,
    /// <see cref="ShotFate.Down"/> and <see cref="ShotFate.Scratch"/>.</summary>
    internal PocketName Pocket;

    /// <summary>Whether the object ball is met.</summary>
    internal bool Met;

    /// <summary>Sine of the cut at the meeting: 0 full, 1 a miss by nothing with the object ball to the left.</summary>
    internal double Offset;

    /// <summary>On which side each leg of the cue ball passes the object ball: 1, -1, or 0 where the leg does not pass
    /// it.</summary>
    internal PassedSides Sides;

    /// <summary>Where along the edge of the table the object ball touches, cushion after cushion, the pocket it drops
    /// into or the jaw last (<see cref="TableEdge"/>), metres.</summary>
    internal EdgePlaces Edge;

    /// <summary>How many of <see cref="Edge"/> there are.</summary>
    internal int EdgeCount;

    internal readonly RouteKey Route => new(CueBall, ObjectBall, Pocket);

    /// <summary>Whether the object ball goes down by a route; the cue ball may yet follow it.</summary>
    internal readonly bool Drops(RouteKey route) => Fate is ShotFate.Down or ShotFate.Made && Route == route;

    internal readonly bool Makes(RouteKey route) => Fate == ShotFate.Made && Route == route;
}

/// <summary>Sides of three legs.</summary>
[InlineArray(3)]
internal struct PassedSides
{
    private sbyte _first;
}

/// <summary>Places along the edge.</summary>
[InlineArray(SeenShot.Places)]
internal struct EdgePlaces
{
    private double _first;
}
