using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Coaching.Effects.Stages;

/// <summary>Finds in a shot the contacts that lead a ball to its target, or says why there are none.</summary>
internal static class ChainFinder
{
    /// <summary>The chain of a ball.</summary>
    /// <param name="trace">The shot.</param>
    /// <param name="names">The balls' names, for what is said.</param>
    /// <param name="ball">Index of the measured ball.</param>
    /// <param name="wanted">Number of cushions asked for; null to count as <see cref="EffectsOptions"/> says.</param>
    /// <param name="aimed">Number of cushions that the scene's aim names for this ball, or 0.</param>
    /// <param name="problem">Why there is no chain.</param>
    internal static ShotChain? Find(
        Trace trace, IReadOnlyList<string> names, int ball, int? wanted, int aimed, out string problem)
    {
        problem = "";
        string name = names[ball];
        int end = IndexOf(trace, 0, e => e.BallA == ball && IsRail(e));
        if (end < 0)
        {
            problem = Still(trace, ball, name);
            return null;
        }

        int? hit = LastHit(trace, ball, end);
        int other = IndexOf(trace, (hit ?? -1) + 1, e => e.Kind == ShotEventKind.BallsMeet && e.BallA == ball);
        if (other >= 0 && other < end)
        {
            string met = names[trace.Events[other].BallB!.Value];
            problem = $"ball {name} meets {met} before it comes to a cushion, so it has no way off a mirror bank";
            return null;
        }

        List<CountedCushion> cushions = Cushions(trace, ball, end);
        if (cushions.Count == 0 && hit is null)
        {
            problem = $"ball {name} goes into a pocket without a cushion and without a hit; there is nothing to split";
            return null;
        }

        if (wanted > cushions.Count)
        {
            string times = cushions.Count switch { 0 => "no cushion", 1 => "one cushion", var n => $"{n} cushions" };
            problem = $"ball {name} comes off {times} before its way is broken, not {wanted}";
            return null;
        }

        int count = wanted ?? Count(trace, ball, cushions, aimed, hit is not null);
        int? striker = hit is { } at ? Partner(trace.Events[at], ball) : null;
        int last = count > 0 ? cushions[count - 1].Event : hit!.Value;
        return new ShotChain
        {
            Trace = trace,
            Ball = ball,
            Hit = hit,
            Striker = striker,
            SetsOutFree = SetsOutFree(trace, striker ?? ball, hit ?? end),
            Cushions = cushions[..count],
            Next = trace.Events.Skip(last + 1).FirstOrDefault(
                e => (e.BallA == ball || e.BallB == ball) && e.Kind != ShotEventKind.SlideEnds),
        };
    }

    private static bool IsRail(ShotEvent e) =>
        e.Kind is ShotEventKind.Cushion or ShotEventKind.Jaw or ShotEventKind.Pocketed;

    private static int IndexOf(Trace trace, int from, Func<ShotEvent, bool> wanted)
    {
        for (int k = from; k < trace.Events.Count; k++)
        {
            if (wanted(trace.Events[k]))
                return k;
        }

        return -1;
    }

    private static string Still(Trace trace, int ball, string name)
    {
        bool moves = trace.Setup.Balls[ball].Start.Velocity.Length > 0
            || IndexOf(trace, 0, e => e.BallA == ball || e.BallB == ball) >= 0;
        return moves
            ? $"ball {name} stops before it comes to a cushion or a pocket, so it has no way off a mirror bank"
            : $"ball {name} does not move";
    }

    private static int? LastHit(Trace trace, int ball, int before)
    {
        for (int k = before - 1; k >= 0; k--)
        {
            if (trace.Events[k].Kind == ShotEventKind.BallsMeet && trace.Events[k].BallB == ball)
                return k;
        }

        return null;
    }

    // The cushions one after another, as long as nothing else is touched. A second touch by a ball while the first
    // cushion is at work ends the row too.
    private static List<CountedCushion> Cushions(Trace trace, int ball, int from)
    {
        var found = new List<CountedCushion>();
        TableSpec table = trace.Setup.Equipment.Table;
        CushionSpec spec = trace.Setup.Equipment.Cushion;
        double reach = TableOutline.Reach(trace.Setup.Balls[ball].Radius, spec.NoseHeight);
        for (int k = from; k < trace.Events.Count; k++)
        {
            ShotEvent e = trace.Events[k];
            if (e.BallA != ball && e.BallB != ball)
                continue;
            if (e.Kind is ShotEventKind.SlideEnds)
                continue;
            if (e.Kind != ShotEventKind.Cushion)
                break;
            CushionLaw law = e.Duration > 0 ? spec.Law : CushionLaw.Impulse;
            CushionName name = e.Cushion!.Value;
            found.Add(new CountedCushion(k, name, law, CountedCushion.LineOf(name, table, reach)));
        }

        return found;
    }

    private static int Count(Trace trace, int ball, List<CountedCushion> cushions, int aimed, bool isHit)
    {
        if (cushions.Count == 0)
            return 0;
        if (aimed > 0 && aimed <= Math.Min(cushions.Count, EffectsOptions.MostCushions))
            return aimed;
        if (cushions.Count > EffectsOptions.MostCushions)
            return 1;
        int last = cushions[^1].Event;
        PocketName? pocket = trace.Balls[ball].Pocket;
        ShotEvent[] after =
        [
            .. trace.Events.Skip(last + 1).Where(
                e => (e.BallA == ball || e.BallB == ball) && e.Kind != ShotEventKind.SlideEnds),
        ];
        bool straightDown = pocket is not null && after.All(e => IsRail(e) && e.Pocket == pocket);
        bool kicksBall = !isHit && after.Length > 0 && after[0].Kind == ShotEventKind.BallsMeet;
        return straightDown || kicksBall ? cushions.Count : 1;
    }

    private static int Partner(ShotEvent e, int ball) => e.BallA == ball ? e.BallB!.Value : e.BallA;

    private static bool SetsOutFree(Trace trace, int mover, int before)
    {
        for (int k = 0; k < before; k++)
        {
            ShotEvent e = trace.Events[k];
            if ((e.BallA == mover || e.BallB == mover)
                && e.Kind is not (ShotEventKind.Tip or ShotEventKind.SlideEnds))
            {
                return false;
            }
        }

        return trace.Setup.Balls[mover].Start.Velocity.Length > 0;
    }
}
