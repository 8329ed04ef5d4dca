using Longrail.Coaching.Players;
using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Chooses the strokes of a route that are worth naming: wide windows that differ in speed or tip, centre
/// ball among them, each with its leeway, in an order that a teacher would accept.</summary>
/// <remarks>
/// A stroke's worth is how well it forgives its player: each of the player's errors (which grow with speed,
/// <see cref="Player.Growth"/>) over the leeway on its narrower side, the squares summed, and the root of the inverse
/// taken. Strokes within <see cref="AsGood"/> of the best go before it, the softer and more central first, a third of a
/// radius off centre counting as much as two thirds more speed. Hard strokes and strokes far off centre are named only
/// if no milder one is worth <see cref="MilderWorth"/> of the best.
/// </remarks>
/// <param name="leeways">Finds leeways.</param>
/// <param name="who">Whose errors count.</param>
/// <param name="elevation">The butt's elevation, radians.</param>
/// <param name="radius">The cue ball's radius, metres.</param>
internal sealed class StrokeChooser(LeewayFinder leeways, Player who, double elevation, double radius)
{
    /// <summary>Faster than this a stroke is hard, m/s.</summary>
    internal const double Hard = 4.5;

    /// <summary>Farther off centre than this, over the radius, a stroke is not mild.</summary>
    internal const double OffCentre = 0.35;

    private const double AsGood = 0.85;
    private const double MilderWorth = 2.0 / 3;

    /// <summary>Most strokes that are named for a route.</summary>
    private const int Most = 4;

    /// <summary>A window narrower than this many of the player's standard deviations of aim is hit one time in
    /// ten.</summary>
    private const double Hopeless = 0.25;

    /// <summary>Speeds nearer than this many steps of the grid count as the same choice.</summary>
    private const int SpeedsApart = 2;

    /// <summary>The strokes of a route, best first; empty if no window's middle makes the ball.</summary>
    internal IReadOnlyList<FoundStroke> Choose(RouteKey route, IReadOnlyList<RouteWindow> windows)
    {
        RouteWindow[] ranked = [.. windows.OrderByDescending(Promise)];
        double enough = Promise(ranked[0]) / 3;
        RouteWindow[] promising = [.. ranked.Where(w => Promise(w) >= enough)];
        var chosen = new List<Candidate>();
        var taken = new List<GridNode>();
        // What hardly anybody could play is named once.
        int most = ranked[0].Window.Width < Hopeless * who.Aim ? 1 : Most;
        if (most > 1)
            Take(route, promising.Where(w => w.Node.TipIndex == 0 && w.Node.Speed <= Hard), 2, taken, chosen);
        Take(route, promising, most, taken, chosen);
        if (chosen.Count == 0) Take(route, ranked, 1, taken, chosen);
        if (chosen.Count == 0) return [];
        if (most > 1) Improve(route, chosen);
        return Ordered(chosen);
    }

    /// <summary>One stroke, quickly: the middle of the most promising window.</summary>
    internal FoundStroke? First(RouteKey route, IEnumerable<RouteWindow> windows) =>
        windows.OrderByDescending(Promise).Take(3).Select(w => At(route, w)).FirstOrDefault(s => s is not null);

    /// <summary>What a window promises before its leeway is known: its width over the growth of errors.</summary>
    private double Promise(RouteWindow window) => window.Window.Width / who.Growth(window.Node.Speed);

    private void Take(
        RouteKey route, IEnumerable<RouteWindow> windows, int most, List<GridNode> taken, List<Candidate> chosen)
    {
        int tries = 0;
        foreach (RouteWindow window in windows)
        {
            if (chosen.Count >= most || tries == 2 * most) return;
            if (taken.Exists(node => Alike(node, window.Node))) continue;
            tries++;
            if (At(route, window) is not { } stroke) continue;
            taken.Add(window.Node);
            chosen.Add(Weighed(stroke));
        }
    }

    private static bool Alike(GridNode a, GridNode b) =>
        a.TipIndex == b.TipIndex && Math.Abs(a.SpeedIndex - b.SpeedIndex) < SpeedsApart;

    private FoundStroke? At(RouteKey route, RouteWindow window)
    {
        Stroke stroke = window.Node.Stroke(window.Window.Middle, elevation);
        return leeways.Of(route, stroke) is { } leeway ? new FoundStroke(stroke, leeway) : null;
    }

    /// <summary>Moves the best stroke between the nodes, where that is worth more.</summary>
    private void Improve(RouteKey route, List<Candidate> chosen)
    {
        int best = chosen.IndexOf(chosen.MaxBy(c => c.Worth));
        if (Centred(route, chosen[best].Stroke) is { } centred && Weighed(centred) is var moved
            && moved.Worth > chosen[best].Worth)
            chosen[best] = moved;
    }

    /// <summary>The stroke moved half way to the middle of what it may be off in speed and tip, and its aim to the
    /// middle there.</summary>
    private FoundStroke? Centred(RouteKey route, FoundStroke from)
    {
        Leeway l = from.Leeway;
        // A side that is open ended does not pull: nothing is gained beyond what a player errs by.
        double speed = Pull(l.Slower, l.Faster, 3 * who.Speed * from.Stroke.Speed);
        double right = Pull(l.TipLeft, l.TipRight, 3 * who.TipAcross);
        double above = Pull(l.TipLower, l.TipHigher, 3 * who.TipUp);
        Stroke moved = from.Stroke with
        {
            Speed = from.Stroke.Speed + 0.5 * speed,
            OffsetRight = from.Stroke.OffsetRight + 0.5 * right,
            OffsetAbove = from.Stroke.OffsetAbove + 0.5 * above,
        };
        if (leeways.AimMiddle(route, moved) is not { } aim) return null;
        Stroke centred = moved with { Aim = aim };
        return leeways.Of(route, centred) is { } there ? new FoundStroke(centred, there) : null;
    }

    private static double Pull(LeewaySide less, LeewaySide more, double most) =>
        0.5 * (Math.Min(more.Amount, most) - Math.Min(less.Amount, most));

    private static IReadOnlyList<FoundStroke> Ordered(List<Candidate> chosen)
    {
        double best = chosen.Max(c => c.Worth);
        bool mildWillDo = chosen.Exists(c => c.IsMild && c.Worth >= MilderWorth * best);
        IEnumerable<Candidate> named = chosen.Where(c => c.IsMild || !mildWillDo);
        double top = named.Max(c => c.Worth);
        return
        [
            .. named.OrderBy(c => c.Worth < AsGood * top).ThenBy(c => c.Worth < AsGood * top ? -c.Worth : c.Cost)
                .Select(c => c.Stroke),
        ];
    }

    private Candidate Weighed(FoundStroke found)
    {
        (Leeway l, Stroke s) = (found.Leeway, found.Stroke);
        double growth = who.Growth(s.Speed);
        double sum = Square(growth * who.Aim, l.AimLeft, l.AimRight)
            + Square(who.Speed * s.Speed, l.Slower, l.Faster)
            + Square(growth * who.TipAcross, l.TipLeft, l.TipRight)
            + Square(growth * who.TipUp, l.TipLower, l.TipHigher);
        double off = Math.Sqrt(s.OffsetRight * s.OffsetRight + s.OffsetAbove * s.OffsetAbove) / radius;
        bool mild = s.Speed <= Hard && off <= OffCentre;
        return new Candidate(found, 1 / Math.Sqrt(sum + 1e-12), s.Speed * (1 + 2 * off), mild);
    }

    private static double Square(double error, LeewaySide less, LeewaySide more)
    {
        double narrower = Math.Max(Math.Min(less.Amount, more.Amount), 1e-9);
        return error * error / (narrower * narrower);
    }

    private readonly record struct Candidate(FoundStroke Stroke, double Worth, double Cost, bool IsMild);
}
