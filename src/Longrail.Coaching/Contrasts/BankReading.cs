using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Coaching.Contrasts;

/// <summary>A bank as an instructor looks at it: which ball came off which cushion how, and where it went.</summary>
/// <remarks>The banked ball is the first ball that the cue ball hits, if it touches a cushion; else the cue ball
/// itself. Its first cushion and what follows are read.</remarks>
public sealed record BankReading
{
    /// <summary>Index of the banked ball.</summary>
    public required int Ball { get; init; }

    /// <summary>Place of the rebound among the trace's events.</summary>
    public required int EventIndex { get; init; }

    /// <summary>The cushion that it came off.</summary>
    public required CushionName Cushion { get; init; }

    /// <summary>The rebound.</summary>
    public required CushionReading Rebound { get; init; }

    /// <summary>The hit that sent the banked ball off; null if it is the cue ball.</summary>
    public MeetReading? Hit { get; init; }

    /// <summary>The cushion whose line it reached next, or null if it stopped, met a ball or dropped before.</summary>
    public CushionName? Target { get; init; }

    /// <summary>Where it reached that line, in diamonds along it; null with <see cref="Target"/>.</summary>
    public double? LandingDiamonds { get; init; }

    /// <summary>The same in metres along the target, from the head or from the right; null with
    /// <see cref="Target"/>.</summary>
    public double? LandingMetres { get; init; }

    /// <summary>What happens to it next, other than that its skid ends; null if the shot is not followed so
    /// far.</summary>
    public ShotEvent? Next { get; init; }

    /// <summary>The pocket it went into in the end, or null.</summary>
    public PocketName? Pocket { get; init; }

    /// <summary>Reads the bank off a shot; null if neither ball touches a cushion.</summary>
    /// <param name="trace">The shot.</param>
    /// <param name="readings">Its readings.</param>
    public static BankReading? Of(Trace trace, TraceReadings readings)
    {
        foreach (int? ball in (int?[])[readings.Shot.FirstBallHit, readings.Shot.StruckBall])
        {
            if (ball is { } index && FirstCushion(trace, index) is { } at and >= 0)
                return Of(trace, readings, index, at);
        }

        return null;
    }

    private static int FirstCushion(Trace trace, int ball)
    {
        for (int k = 0; k < trace.Events.Count; k++)
        {
            if (trace.Events[k].Kind == ShotEventKind.Cushion && trace.Events[k].BallA == ball)
                return k;
        }

        return -1;
    }

    private static BankReading Of(Trace trace, TraceReadings readings, int ball, int at)
    {
        var rebound = (CushionReading)readings.Events[at]!;
        CushionName? target = Enum.TryParse(rebound.LandingCushion, ignoreCase: true, out CushionName name)
            ? name
            : null;
        double? diamonds = target is null ? null : rebound.LandingDiamonds;
        TableSpec table = trace.Setup.Equipment.Table;
        double diamond = target is CushionName.Left or CushionName.Right ? table.DiamondAlong : table.DiamondAcross;
        return new BankReading
        {
            Ball = ball,
            EventIndex = at,
            Cushion = trace.Events[at].Cushion!.Value,
            Rebound = rebound,
            Hit = LastHit(trace, readings, ball, at),
            Target = diamonds is null ? null : target,
            LandingDiamonds = diamonds,
            LandingMetres = diamonds * diamond,
            Next = trace.Events.Skip(at + 1).FirstOrDefault(
                e => (e.BallA == ball || e.BallB == ball) && e.Kind != ShotEventKind.SlideEnds),
            Pocket = trace.Balls[ball].Pocket,
        };
    }

    private static MeetReading? LastHit(Trace trace, TraceReadings readings, int ball, int before)
    {
        for (int k = before - 1; k >= 0; k--)
        {
            if (trace.Events[k].Kind == ShotEventKind.BallsMeet && trace.Events[k].BallB == ball)
                return readings.Events[k] as MeetReading;
        }

        return null;
    }
}
