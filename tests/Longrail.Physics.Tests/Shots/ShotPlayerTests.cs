using Longrail.Physics.Shots;
using Longrail.TestKit;

namespace Longrail.Physics.Tests.Shots;

/// <summary>A watched shot is the same shot, as far as it is watched.</summary>
public class ShotPlayerTests
{
    [Fact]
    public void A_watched_shot_is_the_same_shot_bit_for_bit_up_to_where_it_is_ended() => Cases.Check(
        SceneGen.SmallShot,
        500,
        shot =>
        {
            var options = new ShotOptions(MaxTime: 60, MaxEvents: 5000);
            Trace whole = ShotRunner.Run(shot, options);
            var player = new ShotPlayer();
            for (int enough = 1; enough <= whole.Events.Count; enough += 1 + whole.Events.Count / 4)
            {
                var watch = new EndsAfter { Left = enough };
                StopReason ended = player.Play(shot, options, ref watch);
                if (ended != StopReason.Watched) throw new InvalidOperationException($"ended {ended}");
                if (player.EventCount < enough) throw new InvalidOperationException("ended too early");
                for (int i = 0; i < enough; i++) Same(whole.Events[i], player[i]);
            }

            StopReason last = player.Play(shot, options);
            if (last != whole.Ended) throw new InvalidOperationException($"ended {last}, not {whole.Ended}");
            for (int i = 0; i < shot.Balls.Count; i++)
            {
                if (player.End(i) != whole.Balls[i]) throw new InvalidOperationException($"ball {i} ends elsewhere");
            }
        },
        SceneText.Describe,
        shot => shot.Balls.Count);

    [Fact]
    public void A_player_has_only_the_balls_of_its_last_shot()
    {
        ShotSetup shot = Cases.At(SceneGen.SmallShot, 3);
        var player = new ShotPlayer();
        player.Play(shot, ShotOptions.Default);
        Assert.Throws<ArgumentOutOfRangeException>(() => player.End(shot.Balls.Count));
        Assert.Throws<ArgumentOutOfRangeException>(() => player.End(-1));
    }

    private static void Same(ShotEvent expected, ShotMoment actual)
    {
        bool same = expected.Time == actual.Time && expected.Kind == actual.Kind && expected.BallA == actual.BallA
            && (expected.BallB ?? -1) == actual.BallB && expected.BeforeA == actual.BeforeA
            && (expected.Duration > 0 || expected.AfterA == actual.AfterA);
        if (!same) throw new InvalidOperationException($"{expected.Kind} at {expected.Time} became {actual.Kind} at {actual.Time}");
    }

    private struct EndsAfter : IShotWatch
    {
        public int Left;

        public bool GoesOn(ShotMoment moment) => --Left > 0;
    }
}
