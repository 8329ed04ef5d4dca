using Longrail.Coaching.Charts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;
using Longrail.TestKit;
using static Longrail.Coaching.Tests.Charts.ChartCases;

namespace Longrail.Coaching.Tests.Charts;

public class ChartRunnerTests
{
    /// <summary>The same shot mirrored differs by the rounding of its coordinates; a root is found to 1e-12 m, and a
    /// diamond is a third of a metre.</summary>
    private const double MirrorImage = 1e-9;

    [Theory]
    [InlineData(PocketName.RightSide, false, true)]
    [InlineData(PocketName.LeftSide, true, false)]
    [InlineData(PocketName.RightSide, true, true)]
    public void A_chart_is_its_own_mirror_image(PocketName pocket, bool endForEnd, bool leftRight)
    {
        Vec2 Turned(Vec2 p) => new(endForEnd ? 8 - p.X : p.X, leftRight ? 4 - p.Y : p.Y);
        ChartPlaces places = ChartPlaces.Line(new(1.2, 2.1), new(2.9, 1.3), 4);
        ChartRequest asked = Request(Route(BankKind.CrossSide), places, 2.4, 4) with
        {
            Tips = [Tip(-0.25), Tip(0.25)],
        };
        BankChart chart = Run(asked);
        // One mirror swaps the hands, two do not.
        int hand = endForEnd == leftRight ? 1 : -1;
        BankChart image = Run(asked with
        {
            Route = Route(BankKind.CrossSide, pocket),
            Places = new ChartPlaces([.. asked.Places.Diamonds.Select(Turned)], 4),
            Tips = [Tip(-0.25 * hand), Tip(0.25 * hand)],
        });

        for (int row = 0; row < chart.Rows.Count; row++)
        {
            for (int k = 0; k < 4; k++)
            {
                Assert.Equal(chart.Rows[row].Cells[k].Failure, image.Rows[row].Cells[k].Failure);
                Expect.Near(
                    Correction(chart.Rows[row].Cells[k]), Correction(image.Rows[row].Cells[k]), MirrorImage,
                    $"row {row}, cell {k}");
            }
        }
    }

    [Fact]
    public void A_solved_line_played_by_the_plain_runner_drops_in_the_middle()
    {
        // Another route through the engine: the whole trace, looked at where the ball passes between the jaws.
        ChartRequest request = Request(Route(BankKind.CrossSide), At(2, 2), 3) with { Tips = [Tip(0.25)] };
        BankChart chart = Run(request);
        Trace trace = PlayedShot.Of(chart, chart[0, 0, 0]);
        Assert.Equal(PocketName.LeftSide, trace.Balls[1].Pocket);
        ShotEvent hit = trace.Events.First(e => e.Kind == ShotEventKind.BallsMeet);
        ShotEvent touch = trace.Events.First(e => e.Kind == ShotEventKind.Cushion && e.BallA == 1);
        Expect.Near(0, touch.BeforeA.Position.DistanceTo(chart[0, 0, 0].Touch!.Value), 1e-9, "touch, m");
        Vec2 centres = hit.BeforeB!.Value.Position - hit.BeforeA.Position;
        Expect.Near(0, centres.Normalized().Cross(hit.BeforeA.Velocity.Normalized()), 1e-9, "sine of the cut");
        double low = touch.Time + touch.Duration;
        double high = trace.Events.First(e => e.Kind == ShotEventKind.Pocketed).Time;
        for (int i = 0; i < 80; i++)
        {
            double middle = 0.5 * (low + high);
            if (trace.StateAt(1, middle).Position.Y < Standard.Table.Width)
                low = middle;
            else
                high = middle;
        }

        Expect.Near(
            Standard.Table.Length / 2, trace.StateAt(1, high).Position.X, 1e-9, "where it crosses the mouth, m");
    }

    [Fact]
    public void The_number_of_threads_changes_nothing()
    {
        ChartRequest request = Request(
            Route(BankKind.CrossCorner), ChartPlaces.Grid(new(3, 1), new(6, 3), 4, 3), 2.5, 4);
        byte[] one = ChartWriter.ToUtf8(Run(request with { Threads = 1 }));
        byte[] many = ChartWriter.ToUtf8(Run(request with { Threads = 5 }));
        Assert.True(one.AsSpan().SequenceEqual(many));
    }

    [Theory]
    [InlineData(0.3, 2.0, 3.0, 0.3175, NoBank.NoRoomBehind)]
    [InlineData(2.0, 2.0, 0.9, 0.3175, NoBank.Miscue)]
    [InlineData(2.0, 2.0, 1.3, 0.3175, NoBank.RunsOutOfSpeed)]
    [InlineData(3.95, 1.0, 3.0, 0.3175, NoBank.TouchInMouth)]
    [InlineData(4.0, 3.9, 3.0, 0.3175, NoBank.TooNear)]
    public void A_place_without_an_answer_says_why(
        double along, double across, double speed, double distance, NoBank reason)
    {
        BankChart chart =
            Run(Request(Route(BankKind.CrossSide), At(along, across), speed) with { Distance = distance });
        ChartCell cell = chart[0, 0, 0];
        Assert.Equal(reason, cell.Failure);
        Assert.Null(cell.Number);
        Assert.Null(cell.CorrectionDiamonds);
        Assert.Equal([reason], chart.Failures);
    }

    [Fact]
    public void Every_reason_has_a_sign_of_its_own_and_a_sentence()
    {
        NoBank[] reasons = [.. Enum.GetValues<NoBank>().Where(reason => reason != NoBank.None)];
        Assert.All(reasons, reason => Assert.Single(ChartWords.Sign(reason)));
        Assert.Equal(reasons.Length, reasons.Select(ChartWords.Sign).Distinct().Count());
        Assert.All(reasons, reason => Assert.NotEmpty(ChartWords.Sentence(reason)));
        Assert.Equal("", ChartWords.Sign(NoBank.None));
    }

    [Fact]
    public void Cancelled_work_ends()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        ChartRequest request = Request(Route(BankKind.CrossSide), At(2, 2), 3);
        Assert.Throws<OperationCanceledException>(() => ChartRunner.Run(request, null, stop.Token));
    }

    [Fact]
    public void Progress_ends_at_one()
    {
        var progress = new Seen();
        ChartRunner.Run(
            Request(Route(BankKind.CrossSide), ChartPlaces.Line(new(1, 2), new(3, 2), 5), 3) with { Threads = 1 },
            progress, TestContext.Current.CancellationToken);
        Assert.Equal([0.2, 0.4, 0.6, 0.8, 1.0], progress.Values);
    }

    private sealed class Seen : IProgress<double>
    {
        internal List<double> Values { get; } = [];

        public void Report(double value) => Values.Add(value);
    }
}
