using Longrail.Coaching.Ways;
using Longrail.Drawing.Paths;
using Longrail.Physics.Shots;

namespace Longrail.Drawing.Sheets;

/// <summary>One way reduced to what is drawn of it.</summary>
internal sealed record WayDrawing
{
    /// <summary>Its letter, colour and dashes.</summary>
    internal required VariantMark Mark { get; init; }

    /// <summary>The route in words.</summary>
    internal required string Words { get; init; }

    /// <summary>The cells of its row in the table.</summary>
    internal required IReadOnlyList<string> Cells { get; init; }

    /// <summary>Its odds in a few characters: "48 %".</summary>
    internal required string Odds { get; init; }

    /// <summary>The cue ball's way.</summary>
    internal required BallTrack Cue { get; init; }

    /// <summary>The object ball's way.</summary>
    internal required BallTrack Ball { get; init; }

    /// <summary>Where cue ball and object ball touch.</summary>
    internal required GhostBall? Contact { get; init; }

    /// <summary>When they touch, seconds; +infinity if they do not.</summary>
    internal required double Meets { get; init; }

    /// <summary>Where the paths go at the edges of the leeway of aim, leg by leg between cushions.</summary>
    internal IReadOnlyList<FanLeg> Fan { get; init; } = [];

    /// <summary>Where the balls are nearest to meeting again; null if that is far, or they do not part.</summary>
    internal KissMark? Kiss { get; init; }

    /// <summary>Where the cue ball stops; null if the ball is never made.</summary>
    internal RestRegion? Rest { get; init; }

    /// <summary>The next shot from there: cue ball, ghost ball, next ball, pocket; empty if there is none.</summary>
    internal IReadOnlyList<TablePoint> Next { get; init; } = [];

    /// <summary>Where the tip strikes, for the inset; only of the first way.</summary>
    internal TipView? Tip { get; init; }

    /// <summary>Takes a leg-by-leg fan between two shots that differ in aim.</summary>
    /// <param name="left">The shot at one edge.</param>
    /// <param name="right">The shot at the other.</param>
    /// <param name="cueBall">Index of the cue ball.</param>
    /// <param name="ball">Index of the object ball.</param>
    internal static IReadOnlyList<FanLeg> FanBetween(Trace left, Trace right, int cueBall, int ball) =>
        [.. FanLeg.Between(left, right, cueBall, ball), .. FanLeg.Between(left, right, ball, null)];
}
