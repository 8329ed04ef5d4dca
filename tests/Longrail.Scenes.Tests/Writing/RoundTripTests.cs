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
    private static readonly Gen<string> _stroke =
        from aim in Number(-6, 6)
        from speed in Gen.OneOf(
            Number(0.001, 15).Select(v => $"\"speed\":{v}"),
            Number(0.1, 20).Select(v => $"\"cueSpeed\":\"{v} mph\""))
        from right in Gen.OneOf(Number(-0.3, 0.3).Select(v => $"{v} R"), Number(-0.4, 0.4).Select(v => $"{v} tip"))
        from elevation in Number(0, 60)
        select $$"""
            , "stroke": { "aim": {{aim}}, {{speed}}, "elevation": "{{elevation}} deg",
                          "tip": { "right": "{{right}}", "above": "1/8 tip" } }
            """;

    private static readonly Gen<string> _solved = Number(-3, 3).Select(aim =>
        $$""" ,"stroke":{"aim":{"at":"9","cut":"12 deg left","solved":{{aim}} } } """);

    private static readonly Gen<string> _launch = Gen.Select(Number(-5, 5), Number(-300, 300)).Select((v, w) =>
        $$""" ,"launch":[{"ball":"9","velocity":[{{v}},"1.5 ft/s"],"spin":[1,{{w}},"30 rpm"]}] """);

    private static readonly Gen<string> _table = Gen.OneOf(
        Gen.Const(""" "pool-9ft" """),
        Gen.Const(""" "snooker-12ft" """),
        Gen.Const(""" "carom-10ft","pockets":"none" """),
        Number(0.09, 0.13).Select(mouth =>
            $$""" "pool-8ft","pockets":{"corner":{"mouth":{{mouth}} },"side":{"cutAngle":"105.5 deg"} } """));

    // Anything that a scene may say; the balls are placed so that they stand clear of each other and of the cushions.
    private static readonly Gen<string> _scene =
        from table in _table
        from cloth in WordOr("state", "damp", Number(0.05, 0.5).Select(mu => $"\"slidingFriction\":{mu}"))
        from nose in WordOr("law", "impulse", Number(0.55, 0.75).Select(part => $"\"noseHeight\":\"{part} D\""))
        from set in WordOr("state", "polished", Number(0.1, 0.3).Select(mass => $"\"mass\":{mass}"))
        from cue in WordOr("preset", "low-deflection", Number(10, 14).Select(tip => $"\"tipDiameter\":\"{tip} mm\""))
        from x in Number(0.1, 0.5)
        from y in WordOr("frozenTo", "right", Number(0.1, 1.0).Select(v => $"\"y\":{v}"))
        from along in Number(3, 7)
        from stripe in Gen.OneOf(
            Gen.Const(""),
            Gen.Const(",\"stripe\":{}"),
            Number(-5, 5).Select(z => $",\"stripe\":{{\"axis\":[1,0.3,{z}]}}"))
        from motion in Gen.OneOf(Gen.Const(""), _stroke, _solved, _launch)
        select $$"""
            { "title": "\"quoted\" \u00e9", "table": { "preset": {{table}} }, "cloth": { {{cloth}} },
              "cushion": { {{nose}} }, "ballSet": { {{set}} }, "cue": { {{cue}} },
              "balls": [ { "id": "cue", "x": {{x}}, {{y}} },
                         { "id": "9", "along": {{along}}, "across": 2, "mass": "6 oz" {{stripe}} } ]
              {{motion}} }
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
        Scene asUsed = SceneFiles.Ready(SceneFiles.OneBall("\"stroke\":{}")).AsUsed;
        string text = Encoding.UTF8.GetString(SceneWriter.ToUtf8(asUsed));
        Assert.All(
            from field in SceneFields.All
            where field.Kind is not null && !field.Path.Contains("[]") && !otherWays.Contains(field.Path)
            select field.Path,
            path => Assert.Contains($"\"{path.Split('.')[^1]}\":", text));
    }

    private static Gen<string> Number(double least, double most) =>
        Gen.Double[least, most].Select(value => value.ToString("R", CultureInfo.InvariantCulture));

    private static Gen<string> WordOr(string field, string word, Gen<string> other) =>
        Gen.OneOf(Gen.Const($"\"{field}\":\"{word}\""), other);
}
