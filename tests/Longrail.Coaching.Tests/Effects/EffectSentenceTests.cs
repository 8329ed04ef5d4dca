using System.Globalization;
using System.Text.RegularExpressions;
using Longrail.Coaching.Effects;
using static Longrail.Coaching.Tests.Effects.EffectScenes;

namespace Longrail.Coaching.Tests.Effects;

public partial class EffectSentenceTests
{
    [Theory]
    [InlineData(EffectUnit.Diamonds)]
    [InlineData(EffectUnit.Millimetres)]
    [InlineData(EffectUnit.HalfOpenings)]
    public void The_amounts_in_the_sentence_add_up_as_they_are_printed(EffectUnit unit)
    {
        foreach (string scene in (string[])["first-bank.json", "cross-side-cut-bank.json", "straight-bank-left.json"])
        {
            string sentence = EffectSentence.Of(Budget(File.ReadAllText(EffectsRunnerTests.ScenePath(scene))), unit);
            string[] halves = sentence.Split(": ", 2);
            decimal total = Amount().Matches(halves[0]).Select(Value).LastOrDefault();
            if (halves[0].Contains(" short ", StringComparison.Ordinal))
                total = -total;

            Assert.Equal(total, Part().Matches(halves[1]).Sum(Value));
        }
    }

    [Fact]
    public void It_says_how_far_which_way_and_of_what()
    {
        string sentence = EffectSentence.Of(Budget(File.ReadAllText(EffectsRunnerTests.ScenePath("first-bank.json"))));

        Assert.StartsWith(
            "The 9 comes 0.31 diamond long of its plain mirror bank: ", sentence, StringComparison.Ordinal);
        Assert.Contains(" from throw by the cut", sentence, StringComparison.Ordinal);
        Assert.EndsWith(".", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shot_that_nothing_turns_says_so()
    {
        // Straight across the table and back: on this line nothing has a side to go to.
        EffectBudget budget = Budget("""
            { "table": { "pockets": "none" }, "balls": [ { "id": "cue", "x": 1.27, "y": 0.6 } ],
              "stroke": { "aim": "90 deg", "speed": 2 } }
            """);

        Assert.Equal("towards the foot", budget.Target.PositiveWord);
        Assert.Equal("The cue comes where its plain mirror line does: nothing turns it.", EffectSentence.Of(budget));
    }

    [Fact]
    public void The_tables_columns_add_up_and_its_rows_are_the_causes()
    {
        EffectBudget budget = Budget(File.ReadAllText(EffectsRunnerTests.ScenePath("two-cushion-bank.json")));
        EffectTable table = EffectTable.Of(budget, EffectUnit.Millimetres);

        Assert.Equal(budget.Effects.Count + 1, table.Causes.Count);
        Assert.Equal(["parts together", "remainder", "total"], table.Sums.Select(row => row[0]));
        Assert.All(table.Causes.Concat(table.Sums), row => Assert.Equal(table.Columns.Count, row.Count));
        IEnumerable<string> heads = table.Columns.Select(c => c.Name);
        Assert.Equal(["at right", "at foot"], heads.Where(head => head.StartsWith("at ", StringComparison.Ordinal)));
        // Shares and, in the last column, what each does alone with their interplay: both make the parts together. Ten
        // printed numbers are off by half a digit each at most.
        foreach (int column in (int[])[2, table.Columns.Count - 1])
        {
            double sum = table.Causes.Where(row => row[column].Length > 0).Sum(row => Number(row[column]));
            Assert.Equal(Number(table.Sums[0][column]), sum, 0.05 * (table.Causes.Count + 1));
        }
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    private static decimal Value(Match match)
    {
        decimal size = decimal.Parse(match.Groups["size"].Value, CultureInfo.InvariantCulture);
        return match.Groups["minus"].Success ? -size : size;
    }

    [GeneratedRegex(@"(?<size>\d+\.\d+)")]
    private static partial Regex Amount();

    [GeneratedRegex(@"(?<minus>minus )?(?<size>\d+\.\d+) from")]
    private static partial Regex Part();
}
