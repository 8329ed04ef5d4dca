using Longrail.Coaching.Players;
using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>Chooses the strokes of a route that are worth naming: wide windows that differ in speed or tip, centre
/// ball among them, each with its leeway.</summary>
/// <param name="leeways">Finds leeways.</param>
/// <param name="who">Whose errors count.</param>
/// <param name="elevation">The butt's elevation, radians.</param>
internal sealed class StrokeChooser(LeewayFinder leeways, Player who, double elevation)
{
    /// <summary>Most strokes that are named for a route.</summary>
    private const int Most = 4;

    /// <summary>A window narrower than this many of the player's standard deviations of aim is hit one time in
    /// ten.</summary>
    private const double Hopeless = 0.25;

    /// <summary>Speeds nearer than this many steps of the grid count as the same choice.</summary>
    private const int SpeedsApart = 2;

    /// <summary>The strokes of a route, the one that forgives most first; empty if no window's middle makes the
    /// ball.</summary>
    internal List<FoundStroke> Choose(RouteKey route, IReadOnlyList<RouteWindow> windows)
    {
        var chosen = new List<(FoundStroke Stroke, double Worth)>();
        var taken = new List<GridNode>();
        RouteWindow[] byWidth = [.. windows.OrderByDescending(w => w.Window.Width)];
        double widest = byWidth[0].Window.Width;
        // What hardly anybody could play is named once.
        bool hopeless = widest < Hopeless * who.Aim;
        if (!hopeless) Take(route, byWidth.Where(w => w.Node.TipIndex == 0 && w.Window.Width > widest / 3), 1, taken, chosen);
        Take(route, byWidth.Where(w => w.Window.Width > widest / 3), hopeless ? 1 : Most, taken, chosen);
        if (chosen.Count == 0) Take(route, byWidth, 1, taken, chosen);
        if (chosen.Count == 0) return [];
        if (hopeless) return [chosen[0].Stroke];
        chosen.Sort((a, b) => b.Worth.CompareTo(a.Worth));
        if (Centred(route, chosen[0].Stroke) is { } better && Worth(better.Leeway, better.Stroke) is var worth
            && worth > chosen[0].Worth)
            chosen[0] = (better, worth);
        return chosen.ConvertAll(c => c.Stroke);
    }

    /// <summary>One stroke, quickly: the middle of the widest window.</summary>
    internal FoundStroke? First(RouteKey route, IEnumerable<RouteWindow> windows)
    {
        foreach (RouteWindow window in windows.OrderByDescending(w => w.Window.Width).Take(3))
        {
            if (At(route, window) is { } stroke) return stroke;
        }

        return null;
    }

    private void Take(
        RouteKey route, IEnumerable<RouteWindow> windows, int most, List<GridNode> taken,
        List<(FoundStroke Stroke, double Worth)> chosen)
    {
        int tries = 0;
        foreach (RouteWindow window in windows)
        {
            if (chosen.Count == most || tries == 2 * most) return;
            if (taken.Exists(node => Alike(node, window.Node))) continue;
            tries++;
            if (At(route, window) is not { } stroke) continue;
            taken.Add(window.Node);
            chosen.Add((stroke, Worth(stroke.Leeway, stroke.Stroke)));
        }
    }

    private static bool Alike(GridNode a, GridNode b) =>
        a.TipIndex == b.TipIndex && Math.Abs(a.SpeedIndex - b.SpeedIndex) < SpeedsApart;

    private FoundStroke? At(RouteKey route, RouteWindow window)
    {
        Stroke stroke = window.Node.Stroke(window.Window.Middle, elevation);
        return leeways.Of(route, stroke) is { } leeway ? new FoundStroke(stroke, leeway) : null;
    }

    /// <summary>The stroke moved to the middle of what it may be off in speed and tip, and its aim to the middle
    /// there.</summary>
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
        if (leeways.Of(route, moved) is not { } leeway) return null;
        Stroke centred = moved with { Aim = moved.Aim + 0.5 * (leeway.AimLeft.Amount - leeway.AimRight.Amount) };
        return leeways.Of(route, centred) is { } there ? new FoundStroke(centred, there) : null;
    }

    private static double Pull(LeewaySide less, LeewaySide more, double most) =>
        0.5 * (Math.Min(more.Amount, most) - Math.Min(less.Amount, most));

    /// <summary>How well a stroke forgives its player: each error in units of the leeway on its narrower side, their
    /// squares summed, and the root of the inverse taken.</summary>
    private double Worth(Leeway l, Stroke stroke)
    {
        double sum = Square(who.Aim, l.AimLeft, l.AimRight) + Square(who.Speed * stroke.Speed, l.Slower, l.Faster)
            + Square(who.TipAcross, l.TipLeft, l.TipRight) + Square(who.TipUp, l.TipLower, l.TipHigher);
        return 1 / Math.Sqrt(sum + 1e-12);
    }

    private static double Square(double error, LeewaySide less, LeewaySide more)
    {
        double narrower = Math.Max(Math.Min(less.Amount, more.Amount), 1e-9);
        return error * error / (narrower * narrower);
    }
}
