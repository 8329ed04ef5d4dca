using Longrail.Coaching.Charts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;
using Longrail.TestKit;
using static Longrail.Coaching.Tests.Charts.ChartCases;

namespace Longrail.Coaching.Tests.Charts;

/// <summary>On a table without friction and loss a chart has nothing to correct: plane geometry.</summary>
public class ChartGeometryTests
{
    private const double Inch = 0.0254;

    [Theory]
    [InlineData(BankKind.CrossSide, 0.8, 0.8, 3.6, 3.2)]
    [InlineData(BankKind.CrossCorner, 2.5, 0.8, 6.5, 3.2)]
    [InlineData(BankKind.LongRail, 4.5, 0.8, 7.2, 3.2)]
    [InlineData(BankKind.Kick, 0.8, 0.8, 5.2, 3.2)]
    public void A_lossless_ball_needs_no_correction_anywhere(
        BankKind kind, double along, double across, double toAlong, double toAcross)
    {
        ChartRequest request = Request(
            Route(kind, equipment: Lossless),
            ChartPlaces.Grid(new(along, across), new(toAlong, toAcross), 5, 3), 1.5, 4);
        BankChart chart = Run(request with
        {
            Equipment = Lossless,
            Tips = [Tip(-0.25, Lossless), Tip(0, Lossless), Tip(0.25, Lossless)],
            Distance = 0.2,
        });

        ChartCell[] answered = [.. chart.Rows.SelectMany(row => row.Cells).Where(cell => cell.Failure == NoBank.None)];
        Assert.All(answered, cell => Expect.Near(0, cell.CorrectionDiamonds!.Value, 1e-9, "correction, diamonds"));
        // Places without an answer lie near the cushions or straight behind the pocket; most have one.
        Assert.True(answered.Length >= 45, $"only {answered.Length} of 90 have an answer");
    }

    [Theory]
    [InlineData(DiamondNumbering.Nose)]
    [InlineData(DiamondNumbering.Sight)]
    [InlineData(DiamondNumbering.Tens)]
    public void The_correction_is_nothing_in_every_numbering(DiamondNumbering numbering)
    {
        ChartRequest request = Request(Route(BankKind.CrossSide, equipment: Lossless), At(2, 2), 3);
        BankChart chart = Run(request with { Equipment = Lossless, Distance = 0.2, Numbering = numbering });
        Expect.Near(0, chart.Rows[0].Cells[0].Correction!.Value, 1e-8, "correction in the numbering");
    }

    [Fact]
    public void The_mirror_bank_of_the_chart_is_the_published_construction()
    {
        // Common geometry: (37.5, 25) in, ball 2.25 in, off a long cushion into the middle of the side pocket across:
        // touch at 41.6022 in = 3.328 diamonds.
        ChartRequest request = Request(
            Route(BankKind.CrossSide, PocketName.RightSide, equipment: Lossless), At(3, 2), 3);
        ChartRow row = Run(request with { Equipment = Lossless, Distance = 0.2 }).Rows[0];
        Expect.Near(41.6022, row.MirrorTouch!.Value.X / Inch, 5e-5, "mirror touch, in, as printed");
        Expect.Near(41.6022, row.Cells[0].Touch!.Value.X / Inch, 5e-5, "touch of the ball, in, as printed");
        Expect.Near(41.6022 / 12.5, row.MirrorNumber!.Value, 5e-6, "number");
    }

    [Fact]
    public void A_kick_between_places_equally_far_from_the_cushion_touches_half_way()
    {
        // Common geometry, also taught as reference: four diamonds away, touch at two.
        ChartRoute kick =
            Route(BankKind.Kick, target: new Vec2(5 * Lossless.Table.DiamondAlong, 0.1), equipment: Lossless);
        ChartPlaces place = At(1, 0.1 / Lossless.Table.DiamondAcross);
        ChartRow row = Run(Request(kick, place, 3) with { Equipment = Lossless }).Rows[0];
        Expect.Near(3, row.MirrorNumber!.Value, 1e-9, "mirror");
        Expect.Near(3, row.Cells[0].Number!.Value, 1e-9, "touch");
    }

    [Theory]
    // Least distance of a ball from the cushion without a double kiss, stop shot, in: d = R (1 - sin 2a)/sin a,
    // recomputed to the digits printed.
    [InlineData(5, 10.67)]
    [InlineData(10, 4.26)]
    [InlineData(15, 2.17)]
    [InlineData(20, 1.17)]
    public void A_double_kiss_is_signed_on_one_side_of_the_closed_form_and_not_on_the_other(
        double degrees, double inches)
    {
        TableSpec table = Lossless.Table;
        double radius = 0.5 * Lossless.BallSet.Diameter;
        double angle = degrees * Math.PI / 180;
        double limit = radius * (1 - Math.Sin(2 * angle)) / Math.Sin(angle);
        Expect.Near(inches, limit / Inch, 0.005, "closed form, as printed");
        foreach ((double part, NoBank expected) in new[] { (0.99, NoBank.DoubleKiss), (1.01, NoBank.None) })
        {
            double gap = part * limit;
            double along = table.Length / 2 - (gap + table.Width - radius) * Math.Tan(angle);
            ChartRequest request = Request(
                Route(BankKind.CrossSide, equipment: Lossless),
                At(along / table.DiamondAlong, (gap + radius) / table.DiamondAcross), 3);
            ChartCell cell = Run(request with { Equipment = Lossless, Distance = 0.15 }).Rows[0].Cells[0];
            Assert.Equal(expected, cell.Failure);
        }
    }
}
