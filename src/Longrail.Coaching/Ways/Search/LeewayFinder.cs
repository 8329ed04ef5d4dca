using Longrail.Physics.Contacts;

namespace Longrail.Coaching.Ways.Search;

/// <summary>How far a stroke may be off, found by stepping out on each side until the ball is missed and halving
/// back.</summary>
/// <remarks>The amount given still makes the ball; the amount and a hundredth more, or the least resolution more if
/// that is more, does not; near the edge of a jaw made and missed may alternate, and a miss lies within that. A gap of
/// misses narrower than a step is stepped over: steps are half of what has been passed, and scratches are looked for at
/// <see cref="ScratchLooks"/> places.</remarks>
/// <param name="player">Plays the shots.</param>
/// <param name="rules">The layout.</param>
/// <param name="names">The balls' names.</param>
internal sealed class LeewayFinder(StrokePlayer player, RouteRules rules, IReadOnlyList<string> names)
{
    /// <summary>Aim is looked at this far to either side, radians: ten degrees.</summary>
    internal const double WidestAim = 10 * SearchResolution.Degree;

    /// <summary>Speeds are looked at down to this and up to <see cref="FastestSpeed"/>, m/s.</summary>
    internal const double SlowestSpeed = 0.2;

    /// <summary>The fastest speed looked at, m/s.</summary>
    internal const double FastestSpeed = 8.0;

    /// <summary>Least resolution of aim, radians.</summary>
    internal const double AimResolution = 0.001 * SearchResolution.Degree;

    private const double FirstAimStep = 0.02 * SearchResolution.Degree;

    /// <summary>Least resolution of speed, m/s.</summary>
    internal const double SpeedResolution = 0.002;

    /// <summary>Least resolution of the tip's place, metres.</summary>
    internal const double TipResolution = 0.02e-3;

    /// <summary>Places along a side at which the cue ball is followed to the end.</summary>
    private const int ScratchLooks = 3;

    private readonly LimitReader _limits = new(rules, names);

    /// <summary>The resolution at an amount: a hundredth of it, or the least.</summary>
    internal static double ResolutionAt(double amount, double least) => Math.Max(least, 0.01 * amount);

    /// <summary>The leeway of a stroke; null if the stroke itself does not make the ball by the route.</summary>
    internal Leeway? Of(RouteKey route, Stroke stroke)
    {
        if (!player.Play(stroke).Makes(route)) return null;
        LeewaySide aimLeft = Aim(route, stroke, 1);
        LeewaySide aimRight = Aim(route, stroke, -1);
        LeewaySide slower = Side(
            route, by => stroke with { Speed = stroke.Speed - by },
            0.01 * stroke.Speed, stroke.Speed - SlowestSpeed, SpeedResolution);
        LeewaySide faster = Side(
            route, by => stroke with { Speed = stroke.Speed + by },
            0.01 * stroke.Speed, FastestSpeed - stroke.Speed, SpeedResolution);
        return new Leeway(
            aimLeft, aimRight, slower, faster,
            Tip(route, stroke, -1, 0), Tip(route, stroke, 1, 0), Tip(route, stroke, 0, -1), Tip(route, stroke, 0, 1));
    }

    /// <summary>The middle of the aims about a stroke's that make the ball; null if the stroke's own does
    /// not.</summary>
    internal double? AimMiddle(RouteKey route, Stroke stroke) => player.Play(stroke).Makes(route)
        ? stroke.Aim + 0.5 * (Aim(route, stroke, 1).Amount - Aim(route, stroke, -1).Amount)
        : null;

    private LeewaySide Aim(RouteKey route, Stroke stroke, int side) => Side(
        route, by => stroke with { Aim = stroke.Aim + side * by }, FirstAimStep, WidestAim, AimResolution);

    private LeewaySide Tip(RouteKey route, Stroke stroke, double right, double above)
    {
        double limit = TipContact.MiscueLimit(player.Cue) * player.Radius;
        // How far to the miscue limit's circle along this axis.
        double along = right * stroke.OffsetRight + above * stroke.OffsetAbove;
        double square = stroke.OffsetRight * stroke.OffsetRight + stroke.OffsetAbove * stroke.OffsetAbove;
        double room = -along + Math.Sqrt(Math.Max(0, along * along + limit * limit - square));
        LeewaySide side = Side(
            route,
            by => stroke with
            {
                OffsetRight = stroke.OffsetRight + right * by,
                OffsetAbove = stroke.OffsetAbove + above * by,
            },
            0.2e-3, room, TipResolution);
        return side.Limit == LeewayLimit.NotReached ? side with { Limit = LeewayLimit.Miscue } : side;
    }

    /// <summary>Steps out to the first miss and halves back; then looks for scratches within.</summary>
    private LeewaySide Side(RouteKey route, Func<double, Stroke> off, double step, double largest, double resolution)
    {
        double made = 0;
        LeewaySide? side = null;
        while (made < largest && side is null)
        {
            double trial = Math.Min(made + Math.Max(step, made / 2), largest);
            SeenShot shot = player.PlayToTheDrop(off(trial));
            if (shot.Drops(route)) made = trial;
            else side = HalvedBack(route, off, made, trial, shot, resolution);
        }

        LeewaySide found = side ?? new LeewaySide(Math.Max(0, largest), LeewayLimit.NotReached);
        return BeforeScratch(route, off, found, resolution);
    }

    private LeewaySide HalvedBack(
        RouteKey route, Func<double, Stroke> off, double made, double missed, SeenShot miss, double resolution)
    {
        while (missed - made > ResolutionAt(made, resolution))
        {
            double middle = 0.5 * (made + missed);
            SeenShot there = player.PlayToTheDrop(off(middle));
            if (there.Drops(route))
            {
                made = middle;
            }
            else
            {
                missed = middle;
                miss = there;
            }
        }

        (LeewayLimit limit, string? ball) = _limits.Of(route, miss);
        return new LeewaySide(made, limit, ball);
    }

    /// <summary>The side as found, or the nearer place from which on the cue ball goes down as well.</summary>
    private LeewaySide BeforeScratch(RouteKey route, Func<double, Stroke> off, LeewaySide found, double resolution)
    {
        double made = 0;
        for (int i = 1; i <= ScratchLooks; i++)
        {
            double trial = found.Amount * i / ScratchLooks;
            if (player.Play(off(trial)).Makes(route))
            {
                made = trial;
                continue;
            }

            double missed = trial;
            while (missed - made > ResolutionAt(made, resolution))
            {
                double middle = 0.5 * (made + missed);
                if (player.Play(off(middle)).Makes(route)) made = middle;
                else missed = middle;
            }

            return new LeewaySide(made, LeewayLimit.Scratch);
        }

        return found;
    }
}
