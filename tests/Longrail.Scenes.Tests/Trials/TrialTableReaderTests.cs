using System.Text;
using Longrail.Scenes.Trials;

namespace Longrail.Scenes.Tests.Trials;

public class TrialTableReaderTests
{
    private static readonly TrialTableNeeds _plan = new([("A", "clean"), ("B", "dirty")], 0.3175, 2.54);

    [Fact]
    public void Units_stand_in_the_names_of_the_columns()
    {
        TrialTable table = Read("shot,condition,landing_in,speed_mph,made\n1,A,50,5,yes\n2,B,49.5,,0\n");
        // 1 in = 0.0254 m and 1 mph = 0.44704 m/s exactly (NIST SP 811).
        Assert.Equal(50 * 0.0254, table.Shots[0].Landing!.Value, 1e-12);
        Assert.Equal(5 * 0.44704, table.Shots[0].Speed!.Value, 1e-12);
        Assert.Equal(new TrialShot(3, 2, 1, table.Shots[1].Landing, null, false), table.Shots[1]);
    }

    [Fact]
    public void Diamonds_count_with_the_plans_table() =>
        Assert.Equal(4 * 0.3175, Read("condition,landing_diamonds\nA,4\nB,3.9\n").Shots[0].Landing!.Value, 1e-12);

    [Theory]
    [InlineData("condition;landing_mm;speed_mps\nA;1250,5;2,5\nB;1300;2,4\n")]
    [InlineData("condition\tlanding_mm\tspeed_mps\nA\t1250,5\t2,5\nB\t1300\t2.4\n")]
    [InlineData("\ufeffcondition,landing_mm,speed_mps\r\n# a remark\r\n\r\nA,\"1250.5\",2.5\r\nB,1300,2.4")]
    [InlineData("Condition,Landing_mm,Speed_mps\nclean,1250.5,2.5\nDirty,1300,2.4\n")]
    public void Other_spreadsheets_are_understood(string text)
    {
        TrialTable table = Read(text);
        Assert.Equal(1.2505, table.Shots[0].Landing!.Value, 1e-12);
        Assert.Equal(2.4, table.Shots[1].Speed!.Value, 1e-12);
        Assert.Equal([0, 1], table.Shots.Select(shot => shot.Condition));
    }

    [Fact]
    public void Rows_of_the_template_that_nobody_has_played_are_no_shots()
    {
        TrialTable table = Read("shot,condition,landing_mm,made,note\n1,A,1250,1,\n2,B,,,miscue\n3,B,,,\n");
        Assert.Equal([1, 2], table.Shots.Select(shot => shot.Number));
        Assert.Null(table.Shots[1].Landing);
    }

    [Fact]
    public void Without_a_plan_the_alphabet_orders_the_conditions()
    {
        TrialTableReading reading =
            TrialTableReader.Read("condition,made\nold cue,1\nnew cue,0\n"u8, new TrialTableNeeds());
        Assert.Equal(["new cue", "old cue"], reading.Table!.Conditions);
        Assert.Equal([1, 0], reading.Table.Shots.Select(shot => shot.Condition));
    }

    [Theory]
    [InlineData("shot,landing_mm\n1,2\n", "1:1: condition: there is no such column")]
    [InlineData("shot,condition\n1,A\n", "1:1: nothing is measured; allowed: a column landing_mm")]
    [InlineData("condition,landing_mn\nA,2\n",
        "1:11: landing_mn: unknown column; allowed: shot, condition, made, note")]
    [InlineData("condition,landing_mn\nA,2\n", "did you mean landing_mm?")]
    [InlineData("condition,made,made\nA,1,1\n", "1:16: made: stands twice")]
    [InlineData("condition,landing_mm,landing_in\nA,1,1\n",
        "1:22: landing_in: the landing stands in landing_mm already")]
    [InlineData("condition,landing_mm\nA,about here\n", "2:3: landing_mm: \"about here\" is no number")]
    [InlineData("condition,made\nA,1\nC,1\n",
        "3:1: condition: \"C\" is no condition of this trial; allowed: A or clean; B or dirty")]
    [InlineData("condition,made\nA,1\nditry,1\n", "did you mean dirty?")]
    [InlineData("condition,made\nA,perhaps\n", "2:3: made: \"perhaps\" is neither yes nor no")]
    [InlineData("shot,condition,made\n1,A,1\n1,B,0\n", "3:1: shot: shot 1 stands in line 2 already")]
    [InlineData("shot,condition,made\nfirst,A,1\n", "2:1: shot: \"first\" is no number of a shot")]
    [InlineData("condition,landing_mm\nA,1,5\n",
        "2:1: 3 cells where the head has 2; allowed: as many as the head; a decimal comma needs semicolons")]
    [InlineData("condition,landing_mm\nA,9999\n",
        "2:3: landing_mm: 9999 mm lies off the cushion; allowed: 0 to 2540 mm; is the unit right?")]
    [InlineData("condition,landing_mm,speed_mps\nA,1250,-2\n", "2:8: speed_mps: is not positive")]
    [InlineData("condition,landing_mm\nA,3.97\nB,4.1\n",
        "landing_mm: all shots land within 10 mm of the corner; allowed: landing_diamonds")]
    [InlineData("condition,landing_mm\n", "no shot has been written down")]
    [InlineData("condition,landing_mm\nA,\"12\n", "a quotation mark stands where it does not belong")]
    [InlineData("", "the table is empty")]
    public void Mistakes_are_told_with_line_and_column(string text, string told)
    {
        TrialTableReading reading = TrialTableReader.Read(Encoding.UTF8.GetBytes(text), _plan);
        Assert.Null(reading.Table);
        string all = string.Join('\n', reading.Errors.Select(error => (error with { File = "r.csv" }).ToString()));
        Assert.Contains(told, all, StringComparison.Ordinal);
    }

    [Fact]
    public void Diamonds_without_a_plan_are_refused()
    {
        TrialTableReading reading = TrialTableReader.Read("condition,landing_diamonds\nA,4\n"u8, new TrialTableNeeds());
        Assert.Contains("how long a diamond is", Assert.Single(reading.Errors).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_of_another_encoding_is_refused() =>
        Assert.Contains("UTF-8", TrialTableReader.Read([0xC3, 0x28], _plan).Errors[0].Problem,
            StringComparison.Ordinal);

    [Fact]
    public void Mistakes_in_every_row_are_not_all_told()
    {
        string text = "condition,made\n" + string.Concat(Enumerable.Repeat("A,?\n", 500));
        Assert.InRange(TrialTableReader.Read(Encoding.UTF8.GetBytes(text), _plan).Errors.Count, 1, 12);
    }

    private static TrialTable Read(string text)
    {
        TrialTableReading reading = TrialTableReader.Read(Encoding.UTF8.GetBytes(text), _plan);
        Assert.Empty(reading.Errors);
        return reading.Table!;
    }
}
