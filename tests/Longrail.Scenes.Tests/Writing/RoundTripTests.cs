using System.Globalization;
using System.Text;
using CsCheck;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Scenes.Tests.Writing;

/// <summary>What is written is read back as the same scene and the same shot, bit for bit.</summary>
public sealed class RoundTripTests
{
    private static readonly Gen<string> _motion = Gen.OneOf(
        Gen.Const(""),
        from aim in Gen.Double[-10, 10]
        from speed in Gen.OneOf(
            Gen.Double[0.001, 15].Select(v => $"\"speed\":{Text(v)}"),
            Gen.Double[0.1, 20].Select(v => $"\"cueSpeed\":\"{Text(v)} mph\""))
        from right in Gen.OneOf(
            Gen.Double[-0.3, 0.3].Select(v => $"\"{Text(v)} R\""),
            Gen.Double[-0.4, 0.4].Select(v => $"\"{Text(v)} tip\""))
        from elevation in Gen.Double[0, 60]
        select $$"""
            ,"stroke":{"aim":{{Text(aim)}},{{speed}},"tip":{"right":{{right}},"above":"1/8 tip"},"elevation":"{{Text(elevation)}} deg"}
            """,
        from aim in Gen.Double[-3, 3]
        select $",\"stroke\":{{\"aim\":{{\"at\":\"9\",\"cut\":\"12 deg left\",\"solved\":{Text(aim)}}}}}",
        from v in Gen.Double[-5, 5]
        from w in Gen.Double[-300, 300]
        select $",\"launch\":[{{\"ball\":\"9\",\"velocity\":[{Text(v)},\"1.5 ft/s\"],\"spin\":[1,{Text(w)},\"30 rpm\"]}}]");

    // Anything that a scene may say; places are drawn so that the two balls stand clear of each other and of the
    // cushions.
    private static readonly Gen<string> _scene =
        from table in Gen.OneOf(
            Gen.Const("\"pool-9ft\""),
            Gen.Const("\"snooker-12ft\""),
            Gen.Const("\"carom-10ft\",\"pockets\":\"none\""),
            Gen.Double[0.09, 0.13].Select(m =>
                $"\"pool-8ft\",\"pockets\":{{\"corner\":{{\"mouth\":{Text(m)}}},\"side\":{{\"cutAngle\":\"105.5 deg\"}}}}"))
        from cloth in Gen.OneOf(Gen.Const("\"state\":\"damp\""), Gen.Double[0.05, 0.5].Select(f => $"\"slidingFriction\":{Text(f)}"))
        from nose in Gen.OneOf(Gen.Const("\"law\":\"impulse\""), Gen.Double[0.55, 0.75].Select(d => $"\"noseHeight\":\"{Text(d)} D\""))
        from balls in Gen.OneOf(Gen.Const("\"state\":\"polished\""), Gen.Double[0.1, 0.3].Select(m => $"\"mass\":{Text(m)}"))
        from cue in Gen.OneOf(
            Gen.Const("\"preset\":\"low-deflection\""), Gen.Double[10, 14].Select(d => $"\"tipDiameter\":\"{Text(d)} mm\""))
        from x in Gen.Double[0.1, 0.5]
        from y in Gen.OneOf(Gen.Double[0.1, 1.0].Select(v => $"\"y\":{Text(v)}"), Gen.Const("\"frozenTo\":\"right\""))
        from along in Gen.Double[3, 7]
        from stripe in Gen.OneOf(
            Gen.Const(""), Gen.Const(",\"stripe\":{}"), Gen.Double[-5, 5].Select(z => $",\"stripe\":{{\"axis\":[1,0.3,{Text(z)}]}}"))
        from motion in _motion
        select $$"""
            {"title":"\"quoted\" \u00e9","table":{"preset":{{table}}},"cloth":{ {{cloth}} },"cushion":{ {{nose}} },"ballSet":{ {{balls}} },
            "cue":{ {{cue}} },"balls":[{"id":"cue","x":{{Text(x)}},{{y}}},{"id":"9","along":{{Text(along)}},"across":2{{stripe}},"mass":"6 oz"}]{{motion}} }
            """;

    [Fact]
    public void A_scene_as_asked_is_written_and_read_as_the_same_scene() =>
        _scene.Sample(text =>
        {
            byte[] written = SceneWriter.ToUtf8(SceneReader.Read(text).Scene!);
            Assert.Equal(written, SceneWriter.ToUtf8(SceneReader.Read(written).Scene!));
        });

    [Fact]
    public void A_scene_as_used_gives_the_same_shot_bit_for_bit() =>
        _scene.Sample(text =>
        {
            ReadyScene first = SceneFiles.Ready(text);
            ReadyScene second = SceneReader.ReadReady(SceneWriter.ToUtf8(first.AsUsed)).Ready!;
            Assert.Equal(first.Setup.Equipment, second.Setup.Equipment);
            Assert.Equal(first.Setup.Balls, second.Setup.Balls);
            Assert.Equal(first.Setup.Stroke, second.Setup.Stroke);
            Assert.Equal(first.StripeAxes, second.StripeAxes);
            Assert.Equal(first.BallIds, second.BallIds);

            // And it is as used already: used again it does not change.
            Assert.Equal(SceneWriter.ToUtf8(first.AsUsed), SceneWriter.ToUtf8(second.AsUsed));
        });

    [Fact]
    public void A_scene_as_used_leaves_nothing_to_defaults()
    {
        // Every quantity of the catalogue stands in it, but for what belongs to another way of saying things or to
        // single balls.
        string[] otherWays = ["stroke.cueSpeed", "stroke.aim.cut", "stroke.aim.solved"];
        string text = Encoding.UTF8.GetString(SceneWriter.ToUtf8(SceneFiles.Ready(SceneFiles.OneBall("\"stroke\":{}")).AsUsed));
        Assert.All(
            SceneFields.All.Where(field => field.Kind is not null && !field.Path.Contains("[]") && !otherWays.Contains(field.Path)),
            field => Assert.Contains($"\"{field.Path.Split('.')[^1]}\":", text));
    }

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
