using Longrail.Scenes.Fields;

namespace Longrail.Scenes.Tests.Fields;

public sealed class NearestWordTests
{
    private static readonly string[] _words = ["slidingFriction", "rollingFriction", "spinDecay", "state"];

    // Common practice, no source: what a reader takes for a slip of the pen.
    [Theory]
    [InlineData("slidingfriction", "slidingFriction")]
    [InlineData("sildingFriction", "slidingFriction")]
    [InlineData("rolingFriction", "rollingFriction")]
    [InlineData("spin", null)]
    [InlineData("sate", "state")]
    [InlineData("states", "state")]
    [InlineData("temperature", null)]
    [InlineData("", null)]
    public void A_slip_of_the_pen_finds_its_word(string written, string? meant) =>
        Assert.Equal(meant, NearestWord.Of(written, _words));

    [Fact]
    public void A_long_text_is_not_compared() => Assert.Null(NearestWord.Of(new string('s', 100_000), _words));
}
