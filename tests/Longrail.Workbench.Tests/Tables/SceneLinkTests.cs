using CsCheck;
using Longrail.Scenes;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;
using Longrail.Workbench.Tables;

namespace Longrail.Workbench.Tests.Tables;

/// <summary>A whole table in a link.</summary>
public sealed class SceneLinkTests
{
    public static TheoryData<string> Samples => [.. SampleScenes.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_scene_comes_back_byte_for_byte(string name)
    {
        Scene scene = SampleScenes.Read(name).Scene!;
        SceneReading back = SceneLink.Read(SceneLink.Of(scene));
        Assert.Empty(back.Errors);
        Assert.Equal(SceneWriter.ToUtf8(scene), SceneWriter.ToUtf8(back.Scene!));
    }

    [Fact]
    public void Any_place_of_a_ball_comes_back_to_the_last_bit() => Gen.Double[0.05, 2.4].Sample(x =>
    {
        Scene scene = SceneSetting.With(SampleScenes.Opening.Scene!, "balls.9.x", x.ToString("R")).Scene!;
        return SceneLink.Read(SceneLink.Of(scene)).Scene!.Balls[1].X!.Value.Value == x;
    });

    [Fact]
    public void A_link_is_made_of_characters_that_an_address_may_hold() =>
        Assert.Matches("^1\\.[A-Za-z0-9_-]+$", SceneLink.Of(SampleScenes.Opening.Scene!));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("1.")]
    [InlineData("2.AAAA")]
    [InlineData("1.AAAA")]
    [InlineData("1.%%%")]
    [InlineData("1.\u00e9\u00e9")]
    public void Anything_else_is_answered_in_words(string? link)
    {
        SceneReading reading = SceneLink.Read(link);
        Assert.Null(reading.Scene);
        Assert.NotEmpty(reading.Errors);
    }

    [Fact]
    public void No_string_of_letters_makes_it_throw() => Gen.String[Gen.Char.AlphaNumeric, 0, 300].Sample(text =>
    {
        SceneReading reading = SceneLink.Read("1." + text);
        return reading.Scene is not null || reading.Errors.Count > 0;
    });

    [Fact]
    public void A_small_link_that_swells_without_end_is_cut_off()
    {
        using var packed = new MemoryStream();
        using (var pack = new System.IO.Compression.BrotliStream(packed,
            System.IO.Compression.CompressionLevel.Optimal, leaveOpen: true))
        {
            for (int k = 0; k < 2000; k++)
                pack.Write(new byte[100_000]);
        }

        string link = "1." + System.Buffers.Text.Base64Url.EncodeToString(packed.ToArray());
        Assert.True(link.Length < SceneLink.Longest);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Null(SceneLink.Read(link).Scene);
        // The largest scene, what it is unpacked from, and room for the messages.
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 4_000_000);
    }
}
