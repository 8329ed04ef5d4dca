using System.Runtime.CompilerServices;
using System.Text;
using Longrail.Coaching.Charts;
using Longrail.Coaching.Players;
using Longrail.Physics.Shots.Readings;
using NJsonSchema;
using static Longrail.Coaching.Tests.Charts.ChartCases;

namespace Longrail.Coaching.Tests.Charts;

/// <summary>Charts and maps as JSON, as comma-separated values, and in words.</summary>
public class ChartFormatTests
{
    [Fact]
    public void The_schema_of_the_repository_is_the_one_that_the_code_makes()
    {
        string path = Path.Combine(Root(), "schemas", "chart-1.schema.json");
        byte[] made = ChartSchema.ToUtf8();
        if (Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1")
            File.WriteAllBytes(path, made);
        Assert.True(
            made.AsSpan().SequenceEqual(File.ReadAllBytes(path)),
            "schemas/chart-1.schema.json is out of date; UPDATE_SNAPSHOTS=1 makes it anew");
    }

    [Fact]
    public async Task Charts_and_maps_fit_the_schema_and_nothing_else_does()
    {
        JsonSchema schema = await JsonSchema.FromJsonAsync(
            Encoding.UTF8.GetString(ChartSchema.ToUtf8()), TestContext.Current.CancellationToken);
        string chart = Encoding.UTF8.GetString(ChartWriter.ToUtf8(Mixed()));
        string kick = Encoding.UTF8.GetString(ChartWriter.ToUtf8(Run(Request(Route(BankKind.Kick), At(2, 1), 3))));
        string leeway = Encoding.UTF8.GetString(ChartWriter.ToUtf8(Run(Map())));
        string odds = Encoding.UTF8.GetString(ChartWriter.ToUtf8(Run(Map() with
        {
            Measure = MapMeasure.Odds,
            Player = PlayerPresets.Default,
            Shots = 5,
            Seed = 77,
        })));

        Assert.All((string[])[chart, kick, leeway, odds], text => Assert.Empty(schema.Validate(text)));
        Assert.NotEmpty(schema.Validate(chart.Replace("\"numbering\"", "\"numbers\"", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(leeway.Replace("\"leewayDegrees\"", "\"leeway\"", StringComparison.Ordinal)));
        Assert.NotEmpty(schema.Validate(odds.Replace("chart/1", "chart/2", StringComparison.Ordinal)));
    }

    [Fact]
    public void Csv_has_a_line_for_each_number_and_units_in_its_names()
    {
        BankChart chart = Mixed();
        string[] lines = ChartCsv.Of(chart).TrimEnd('\n').Split('\n');
        Assert.StartsWith(
            "along_diamonds,across_diamonds,tip,tip_right_m,speed_mps,reason,correction_diamonds,", lines[0]);
        Assert.Equal(1 + chart.Rows.Sum(row => row.Cells.Count), lines.Length);
        Assert.All(lines, line => Assert.Equal(lines[0].Count(c => c == ','), line.Count(c => c == ',')));
        Assert.Contains(lines, line => line.Contains(",touch-in-mouth,,", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(ChartUnit.Diamond, DiamondNumbering.Nose, "+0.11", "0.11 diamond longer")]
    [InlineData(ChartUnit.Diamond, DiamondNumbering.Tens, "+1.1", "1.1 longer")]
    [InlineData(ChartUnit.Millimetre, DiamondNumbering.Nose, "+35", "35 mm longer")]
    [InlineData(ChartUnit.Inch, DiamondNumbering.Nose, "+1.4", "1.4 in longer")]
    public void A_correction_is_said_in_every_unit(
        ChartUnit unit, DiamondNumbering numbering, string text, string words)
    {
        // 0.11 diamond of 12.5 in.
        ChartRequest request = Request(Route(BankKind.CrossSide), At(2, 2), 3) with
        {
            Unit = unit,
            Numbering = numbering,
        };
        double scale = DiamondNumbers.PerDiamond(numbering);
        var cell = new ChartCell
        {
            Failure = NoBank.None,
            CorrectionDiamonds = 0.11,
            Correction = 0.11 * scale,
            Number = 2.5 * scale,
        };
        var chart = new BankChart(request, [new ChartRow(new(2, 2), null, 2.39 * scale, [cell])]);
        Assert.Equal(text, ChartNumbers.Text(request, cell));
        Assert.Contains($"hit it {words} than the mirror", ChartSentences.Example(chart), StringComparison.Ordinal);
    }

    [Fact]
    public void A_correction_that_rounds_to_nothing_has_no_sign()
    {
        ChartRequest request = Request(Route(BankKind.CrossSide), At(2, 2), 3);
        Assert.Equal("0.00", ChartNumbers.WithSign(request, -0.004));
        Assert.Equal("-0.01", ChartNumbers.WithSign(request, -0.006));
    }

    [Theory]
    [InlineData("1/8 tip", 0.001, "1/8 tip right")]
    [InlineData("-1/8 tip", -0.001, "1/8 tip left")]
    [InlineData("0", 0.0, "centre")]
    public void A_tip_is_said_with_its_side(string text, double right, string words) =>
        Assert.Equal(words, ChartNumbers.Tip(new ChartTip(right, text)));

    // With an answer, and without.
    private static BankChart Mixed() => Run(
        Request(Route(BankKind.CrossSide), ChartPlaces.Line(new(1.5, 2), new(3.8, 1), 2), 3) with
        {
            Height = CueHeight.Follow,
        });

    private static MapRequest Map() => new()
    {
        Equipment = Standard,
        Route = Route(BankKind.CrossSide),
        Measure = MapMeasure.Leeway,
        CueBall = new(2, 3),
        From = new(1, 0.5),
        To = new(7, 2),
        Columns = 3,
        Rows = 1,
        Speeds = [3],
    };

    private static string Root([CallerFilePath] string thisFile = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(thisFile)!, "..", "..", ".."));
}
