using Longrail.Physics.Motion;
using Longrail.Physics.Shots;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Outcomes;
using static System.FormattableString;

namespace Longrail.Workbench.Words;

/// <summary>A shot in one sentence, for those who cannot see the drawing.</summary>
internal static class ShotWords
{
    /// <summary>The sentence.</summary>
    public static string Of(Outcome outcome)
    {
        ShotReading shot = outcome.Readings.Shot;
        IReadOnlyList<string> ids = outcome.Scene.BallIds;
        if (shot.StruckBall is not { } struck)
            return "No ball moves.";
        if (shot.FirstBallHit is not { } hit)
            return $"{ids[struck]} meets no ball and {End(outcome, struck)}.";
        CushionReading? cushion = FirstCushion(outcome, hit, out string name);
        string bank = cushion is null ? "" : Invariant($" off the {name} cushion at {cushion.TouchDiamonds:0.00}");
        return $"{ids[hit]}{bank} {End(outcome, hit)}{(shot.DoubleKiss ? ", after a double kiss" : "")}.";
    }

    private static CushionReading? FirstCushion(Outcome outcome, int ball, out string name)
    {
        for (int k = 0; k < outcome.Trace.Events.Count; k++)
        {
            ShotEvent e = outcome.Trace.Events[k];
            if (e.Kind == ShotEventKind.Cushion && e.BallA == ball)
            {
                name = TableWords.Of(e.Cushion!.Value);
                return outcome.Readings.Events[k] as CushionReading;
            }
        }

        name = "";
        return null;
    }

    private static string End(Outcome outcome, int ball)
    {
        BallEnd end = outcome.Trace.Balls[ball];
        double along = end.State.Position.X / outcome.Trace.Setup.Equipment.Table.DiamondAlong;
        double across = end.State.Position.Y / outcome.Trace.Setup.Equipment.Table.DiamondAcross;
        return end.Phase switch
        {
            MotionPhase.Pocketed => $"drops in {TableWords.Of(end.Pocket!.Value)}",
            MotionPhase.AtRest => Invariant($"stops at {along:0.00} along, {across:0.00} across"),
            _ => "is still moving at the end",
        };
    }
}
