using System.Text;
using Longrail.Physics.Equipment;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Scenes.Tests.Fields;

public sealed class SceneSettingTests
{
    private static readonly string _scene = SceneFiles.TwoBalls(
        """
        "stroke": {"aim":"10 deg","speed":2.2,"tip":{"right":"1/8 tip"}},
        "ballSet": {"friction":{"base":0.05,"gain":0,"decay":0}}
        """);

    [Fact]
    public void A_speed_is_set_and_nothing_else_changes()
    {
        Scene asked = Read(_scene);
        Scene changed = Set(asked, "stroke.speed", "5 mph");
        Assert.Equal(5 * 0.44704, changed.Stroke!.Speed!.Value.Value, 1e-15);

        // Set back, the two scenes are the same text.
        Assert.Equal(SceneWriter.ToUtf8(asked), SceneWriter.ToUtf8(Set(changed, "stroke.speed", "2.2")));
    }

    [Fact]
    public void The_scene_that_is_changed_stays_as_it_was()
    {
        Scene asked = Read(_scene);
        byte[] before = SceneWriter.ToUtf8(asked);
        _ = Set(Set(Set(asked, "balls.9.x", "1.2 m"), "ballSet.state", "dirty"), "stroke.aim", "{\"at\":\"9\"}");
        Assert.Equal(before, SceneWriter.ToUtf8(asked));
    }

    [Theory]
    [InlineData("stroke.tip.right", "-1/8 tip", "\"right\": \"-0.125 tip\"")]
    [InlineData("stroke.tip.right", "0", "\"right\": 0")]
    [InlineData("stroke.tip.above", "-0.2 R", "\"above\": \"-0.2 R\"")]
    [InlineData("balls.9.x", "1.25", "\"x\": 1.25")]
    [InlineData("balls[1].x", "1.25", "\"x\": 1.25")]
    [InlineData("cushion.law", "impulse", "\"law\": \"impulse\"")]
    [InlineData("table.pockets", "none", "\"pockets\": \"none\"")]
    [InlineData("table.pockets.corner.mouth", "5 in", "\"mouth\": 0.127")]
    [InlineData("cushion.noseHeight", "0.635 D", "\"noseHeight\": \"0.635 D\"")]
    [InlineData("stroke.aim.at", "9", "\"at\": \"9\"")]
    [InlineData("title", "A name with spaces", "\"title\": \"A name with spaces\"")]
    public void Values_are_taken_as_a_user_types_them(string path, string value, string expected) =>
        Assert.Contains(expected, Encoding.UTF8.GetString(SceneWriter.ToUtf8(Set(Read(_scene), path, value))));

    [Fact]
    public void A_state_takes_back_the_numbers_that_it_stands_for()
    {
        Scene dirty = Set(Read(_scene), "ballSet.state", "dirty");
        BallFriction used = SceneCompiler.Compile(dirty).Ready!.Setup.Equipment.BallSet.Friction;
        Assert.Equal(EquipmentPresets.BallConditions.Single(c => c.Name == "dirty").Friction, used);
    }

    [Fact]
    public void The_stick_s_speed_takes_the_place_of_the_ball_s()
    {
        Scene changed = Set(Read(_scene), "stroke.cueSpeed", "2 m/s");
        Assert.Null(changed.Stroke!.Speed);
        Assert.NotNull(SceneCompiler.Compile(changed).Ready);
    }

    [Fact]
    public void A_place_takes_the_place_of_what_else_gave_it()
    {
        Scene frozen = Read("""{"balls":[{"id":"cue","x":1,"y":0.6},{"id":"9","along":4,"frozenTo":"left"}]}""");
        Assert.Null(Set(frozen, "balls.9.x", "1").Balls[1].Along);
        Assert.Equal(CushionName.Left, Set(frozen, "balls.9.x", "1").Balls[1].FrozenTo);
        Assert.Null(Set(frozen, "balls.9.y", "1").Balls[1].FrozenTo);
    }

    [Theory]
    [InlineData("left", true, false)]
    [InlineData("foot", false, true)]
    public void Freezing_takes_the_place_of_the_coordinate_square_to_the_cushion(string cushion, bool hasX,
        bool hasAcross)
    {
        Scene free = Read("""{"balls":[{"id":"9","x":1,"across":2}]}""");
        Scene frozen = Set(free, "balls.9.frozenTo", cushion);
        Assert.Equal((hasX, hasAcross), (frozen.Balls[0].X is not null, frozen.Balls[0].Across is not null));
        Assert.NotNull(SceneCompiler.Compile(frozen).Ready);
    }

    [Theory]
    [InlineData("stroke.sped", "2", "unknown field")]
    [InlineData("stroke.speed.x", "2", "has no field")]
    [InlineData("stroke.speed", "2 kg", "is a mass")]
    [InlineData("stroke.speed", "-1", "out of range")]
    [InlineData("stroke.speed", "fast", "does not begin with a number")]
    [InlineData("balls.8.x", "1", "there is no \"8\"")]
    [InlineData("balls[7].x", "1", "there is no \"[7]\"")]
    [InlineData("balls[x].x", "1", "there is no \"[x]\"")]
    [InlineData("balls.9", "1", "which field")]
    [InlineData("", "1", "no field")]
    [InlineData("stroke.aim", "{\"at\":", "not JSON")]
    [InlineData("...", "1", "unknown field")]
    [InlineData("[[", "1", "unknown field")]
    public void What_cannot_be_set_is_refused_in_words(string path, string value, string words)
    {
        SceneReading reading = SceneSetting.With(Read(_scene), path, value);
        Assert.Null(reading.Scene);
        Assert.Contains(words, Assert.Single(reading.Errors).Problem);
    }

    private static Scene Read(string text)
    {
        SceneReading reading = SceneReader.Read(text);
        Assert.Empty(reading.Errors);
        return reading.Scene!;
    }

    private static Scene Set(Scene scene, string path, string value)
    {
        SceneReading reading = SceneSetting.With(scene, path, value);
        Assert.Empty(reading.Errors);
        return reading.Scene!;
    }
}
