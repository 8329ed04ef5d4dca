using Longrail.Cli.Input;
using Longrail.Coaching.Contrasts;

namespace Longrail.Cli.Tests.Contrasts;

public class VariationTextTests
{
    [Theory]
    [InlineData("stroke.speed=1.2 m/s,2.5 m/s", "stroke.speed", new[] { "1.2 m/s", "2.5 m/s" })]
    [InlineData("stroke.tip.right=-1/8 tip, 0 ,1/8 tip", "stroke.tip.right", new[] { "-1/8 tip", "0", "1/8 tip" })]
    [InlineData("ballSet.state = polished", "ballSet.state", new[] { "polished" })]
    [InlineData("title=\"one, two\",'three, \"four\"'", "title", new[] { "one, two", "three, \"four\"" })]
    [InlineData("balls.9.stripe.axis=[0,1,0],[1,0,0]", "balls.9.stripe.axis", new[] { "[0,1,0]", "[1,0,0]" })]
    [InlineData("aim={\"at\":\"9\",\"cut\":0},45 deg", "aim", new[] { "{\"at\":\"9\",\"cut\":0}", "45 deg" })]
    [InlineData("notes=a=b", "notes", new[] { "a=b" })]
    public void Levels_stand_between_commas_that_no_quote_or_bracket_holds(string text, string path, string[] levels)
    {
        Variation? variation = VariationText.Read(text, out string problem);

        Assert.Equal("", problem);
        Assert.Equal(path, variation!.Path);
        Assert.Equal(levels, variation.Levels);
    }

    [Theory]
    [InlineData("stroke.speed", "names no field")]
    [InlineData("=1,2", "names no field")]
    [InlineData("stroke.speed=", "no level is given")]
    [InlineData("stroke.speed=1,,2", "level 2 of 3 is empty")]
    [InlineData("stroke.speed=1,2,", "level 3 of 3 is empty")]
    [InlineData("title=\"open,1", "left open")]
    [InlineData("balls.9.stripe.axis=[0,1,0", "left open")]
    public void What_is_wrong_is_said(string text, string expected)
    {
        Assert.Null(VariationText.Read(text, out string problem));
        Assert.Contains(expected, problem, StringComparison.Ordinal);
    }
}
