using Longrail.TestKit;

namespace Longrail.Physics.Tests.References;

/// <summary>The helpers that say no: each must do so.</summary>
public class TestKitTests
{
    [Fact]
    public void Near_fails_when_off_by_more_than_allowed_and_on_anything_not_finite()
    {
        Expect.Near(1, 1.09, 0.1, "within");
        Assert.Throws<ExpectationException>(() => Expect.Near(1, 1.11, 0.1, "off"));
        Assert.Throws<ExpectationException>(() => Expect.Near(1, double.NaN, 0.1, "NaN"));
        Assert.Throws<ExpectationException>(
            () => Expect.Near(1, double.PositiveInfinity, double.PositiveInfinity, "infinite"));
    }

    [Fact]
    public void Close_fails_beyond_the_relative_tolerance()
    {
        Expect.Close(200, 201, 0.01, "within");
        Assert.Throws<ExpectationException>(() => Expect.Close(200, 203, 0.01, "off"));
    }

    [Fact]
    public void Printed_fails_half_a_unit_of_the_last_digit_away()
    {
        Expect.Printed(new GoldenCell("0.72"), 0.7249, "within");
        Assert.Throws<ExpectationException>(() => Expect.Printed(new GoldenCell("0.72"), 0.7251, "off"));
        Assert.Throws<ExpectationException>(() => Expect.Printed(new GoldenCell("3"), 3.6, "off, whole number"));
    }

    [Fact]
    public void That_and_Less_fail_when_not_so()
    {
        Expect.Less(1, 2, "so");
        Assert.Throws<ExpectationException>(() => Expect.That(false, "not so"));
        Assert.Throws<ExpectationException>(() => Expect.Less(2, 2, "equal"));
        Assert.Throws<ExpectationException>(() => Expect.Less(1, 1.5, "not by the margin", 1));
        Assert.Throws<ExpectationException>(() => Expect.Less(double.NaN, 1, "NaN"));
    }

    [Fact]
    public void Order_of_errors_that_fall_by_sixteen_in_steps_of_four_is_two() =>
        Expect.Close(2, Expect.Order(16, 1, 4), Tolerance.Rounding, "order");

    [Fact]
    public void A_table_without_a_source_is_refused()
    {
        Assert.Throws<FormatException>(() => GoldenTable.Parse("bad", "# units: m\na,b\n1,2\n"));
        Assert.Throws<FormatException>(() => GoldenTable.Parse("bad", "# source:\na,b\n1,2\n"));
        Assert.Equal(
            "someone, somewhere", GoldenTable.Parse("good", "# source: someone, somewhere\na,b\n1,2\n").Source);
    }

    [Fact]
    public void A_table_with_a_short_row_or_no_row_or_no_number_is_refused()
    {
        Assert.Throws<FormatException>(() => GoldenTable.Parse("bad", "# source: x\na,b\n1\n"));
        Assert.Throws<FormatException>(() => GoldenTable.Parse("bad", "# source: x\na,b\n"));
        Assert.Throws<FormatException>(() => GoldenTable.Parse("bad", "# source: x\na,b\n1,two\n").Rows[0]["b"]);
        Assert.Throws<ArgumentException>(() => GoldenTable.Parse("bad", "# source: x\na,b\n1,2\n").Rows[0]["c"]);
    }

    [Fact]
    public void Every_golden_table_reads_and_names_its_source()
    {
        string[] files = Directory.GetFiles(GoldenTable.Folder, "*.csv");
        Assert.True(files.Length >= 30, $"only {files.Length} tables found in {GoldenTable.Folder}");
        Assert.All(files, file => Assert.NotEmpty(GoldenTable.Load(Path.GetFileNameWithoutExtension(file)).Source));
    }

    [Theory]
    [InlineData("0.050", 0.0005, false)]
    [InlineData("-12", 0.5, false)]
    [InlineData("3.81*", 0.005, true)]
    public void A_cell_knows_its_last_digit_and_its_mark(string text, double half, bool marked)
    {
        var cell = new GoldenCell(text);
        Expect.Close(half, cell.HalfUnit, Tolerance.Rounding, "half unit");
        Assert.Equal(marked, cell.Marked);
    }
}
