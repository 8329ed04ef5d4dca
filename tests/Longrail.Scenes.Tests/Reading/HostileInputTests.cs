using System.Text;
using CsCheck;
using Longrail.Scenes.Compiling;
using Longrail.Scenes.Reading;

namespace Longrail.Scenes.Tests.Reading;

/// <summary>Whatever is read, the answer is a scene or a list of errors with something in it, never an
/// exception.</summary>
public sealed class HostileInputTests
{
    private static readonly byte[] _scene = Encoding.UTF8.GetBytes(
        """
        { "longrail": "scene/1", "title": "A bank", // with a comment
          "table": { "preset": "pool-8ft", "pockets": { "corner": { "mouth": "5 in", "cutAngle": "142 deg" } } },
          "cloth": { "state": "worn", "spinDecay": 9.0 }, "cushion": { "noseHeight": "63.5 %", "law": "impulse" },
          "ballSet": { "mass": "6 oz", "friction": { "base": 0.01, "gain": 0.1, "decay": "1.1 s/m" } },
          "cue": { "preset": "low-deflection" },
          "balls": [ { "id": "cue", "x": 0.8, "y": 0.5 },
                     { "id": "9", "along": 4.5, "across": "2 diamonds", "stripe": { "axis": [0, 1, 0] } } ],
          "stroke": { "ball": "cue", "aim": "37.5 deg", "speed": "5 mph", "elevation": 0.02,
                      "tip": { "right": "1/8 tip", "above": "-0.1 R" } } }
        """);

    // Pieces from which noise that looks like a scene can be put together.
    private static readonly string[] _pieces =
    [
        "{", "}", "[", "]", ",", ":", "//", "/*", "*/", "\n", "1", "-1", "1e308", "-0", "1e999", "null", "true",
        "\"balls\"", "\"id\"", "\"x\"", "\"stroke\"", "\"aim\"", "\"speed\"", "\"tip\"", "\"right\"",
        "\"at\"", "\"bank\"",
        "\"table\"", "\"pockets\"", "\"none\"", "\"launch\"", "\"velocity\"", "\"stripe\"", "\"axis\"",
        "\"cue\"", "\"9\"", "\"1/8 tip\"", "\"2 m/s\"", "\"1/0 m\"", "\"\\uD800\"", "\"\\u0000\"",
    ];

    private static readonly Gen<string> _piece = Gen.Int[0, _pieces.Length - 1].Select(i => _pieces[i]);

    [Fact]
    public void A_whole_scene_is_read() => Assert.NotNull(SceneReader.ReadReady(_scene).Ready);

    [Fact]
    public void Random_bytes_never_throw() => Gen.Byte.Array[0, 400].Sample(IsAnswered);

    [Fact]
    public void Noise_that_looks_like_a_scene_never_throws() =>
        _piece.Array[0, 60].Select(pieces => Encoding.UTF8.GetBytes(string.Concat(pieces))).Sample(IsAnswered);

    [Fact]
    public void A_scene_cut_off_anywhere_is_refused()
    {
        // The last closing brace is what makes it whole.
        int end = Array.LastIndexOf(_scene, (byte)'}');
        for (int length = 0; length <= end; length++)
        {
            SceneCompilation compilation = SceneReader.ReadReady(_scene.AsSpan(0, length));
            Assert.Null(compilation.Ready);
            Assert.NotEmpty(compilation.Errors);
        }
    }

    [Fact]
    public void A_scene_with_bytes_changed_never_throws() =>
        Gen.Select(Gen.Int[0, _scene.Length - 1], Gen.Byte).Array[1, 4].Select(changes =>
        {
            byte[] changed = (byte[])_scene.Clone();
            foreach ((int place, byte value) in changes)
                changed[place] = value;
            return changed;
        }).Sample(IsAnswered);

    [Fact]
    public void A_scene_with_a_piece_replaced_by_another_never_throws() =>
        Gen.Select(Gen.Int[0, _scene.Length - 1], Gen.Int[0, 12], _piece).Select((start, length, piece) =>
        {
            int end = Math.Min(_scene.Length, start + length);
            return (byte[])[.. _scene.AsSpan(0, start), .. Encoding.UTF8.GetBytes(piece), .. _scene.AsSpan(end)];
        }).Sample(IsAnswered);

    private static bool IsAnswered(byte[] text)
    {
        SceneCompilation compilation = SceneReader.ReadReady(text);
        return compilation.Ready is null == compilation.Errors.Count > 0;
    }
}
