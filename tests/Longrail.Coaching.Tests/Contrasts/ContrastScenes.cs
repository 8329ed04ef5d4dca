using System.Text;
using System.Text.Json;
using Longrail.Coaching.Contrasts;
using Longrail.Scenes;
using Longrail.Scenes.Reading;
using Longrail.Scenes.Writing;

namespace Longrail.Coaching.Tests.Contrasts;

/// <summary>Short scenes for the tests of comparisons, and ways to look into them.</summary>
internal static class ContrastScenes
{
    /// <summary>A cue ball alone on a table without pockets, struck at an angle into a long cushion.</summary>
    internal const string Alone = """
        {
          "title": "Cue ball alone",
          "table": { "pockets": "none" },
          "balls": [ { "id": "cue", "x": 0.8, "y": 0.4 } ],
          "stroke": { "aim": "60 deg", "speed": 2.2, "tip": { "right": 0.0 } }
        }
        """;

    /// <summary>A straight bank of a ball across a table without pockets.</summary>
    internal const string Straight = """
        {
          "table": { "pockets": "none" },
          "balls": [ { "id": "cue", "x": 0.9, "y": 0.2 }, { "id": "9", "x": 1.0, "y": 0.7, "stripe": {} } ],
          "stroke": {
            "aim": { "at": "9", "cut": 0, "solved": "78.7 deg" },
            "speed": "2.2 m/s",
            "tip": { "right": "1/8 tip" }
          }
        }
        """;

    internal static Scene Read(string text)
    {
        SceneReading reading = SceneReader.Read(Encoding.UTF8.GetBytes(text));
        Assert.True(reading.Scene is not null, string.Join("\n", reading.Errors));
        return reading.Scene!;
    }

    internal static Variation Vary(string path, params string[] levels) => new(path, levels);

    internal static Contrast Run(string scene, Hold hold, params Variation[] variations)
    {
        ContrastAnswer answer = ContrastRunner.Run(new ContrastRequest(Read(scene), variations, hold));
        Assert.True(answer.Contrast is not null, string.Join("\n", answer.Errors));
        return answer.Contrast!;
    }

    internal static IReadOnlyList<SceneError> Errors(string scene, Hold hold, params Variation[] variations)
    {
        ContrastAnswer answer = ContrastRunner.Run(new ContrastRequest(Read(scene), variations, hold));
        Assert.Null(answer.Contrast);
        Assert.NotEmpty(answer.Errors);
        return answer.Errors;
    }

    /// <summary>The paths of all fields in which two scenes differ, as they are written.</summary>
    internal static IReadOnlyList<string> Differences(Scene a, Scene b)
    {
        SortedDictionary<string, string> left = Flat(a);
        SortedDictionary<string, string> right = Flat(b);
        IEnumerable<string> differing = left.Keys.Union(right.Keys)
            .Where(key => left.GetValueOrDefault(key) != right.GetValueOrDefault(key));
        return [.. differing.Order(StringComparer.Ordinal)];
    }

    private static SortedDictionary<string, string> Flat(Scene scene)
    {
        var fields = new SortedDictionary<string, string>(StringComparer.Ordinal);
        using var document = JsonDocument.Parse(SceneWriter.ToUtf8(scene));
        Flatten(document.RootElement, "", fields);
        return fields;
    }

    private static void Flatten(JsonElement element, string path, SortedDictionary<string, string> fields)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (JsonProperty member in element.EnumerateObject())
                Flatten(member.Value, path.Length == 0 ? member.Name : $"{path}.{member.Name}", fields);
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            int k = 0;
            foreach (JsonElement item in element.EnumerateArray())
                Flatten(item, $"{path}[{k++}]", fields);
        }
        else
        {
            fields[path] = element.GetRawText();
        }
    }
}
