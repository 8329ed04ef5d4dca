using System.Globalization;
using Longrail.Scenes.Parts;

namespace Longrail.Scenes.Fields;

/// <summary>The catalogue of all fields of a scene file. Reader, writer, schema, messages and the setting of a field by
/// its path all follow it; there is no second list.</summary>
public static partial class SceneFields
{
    /// <summary>The most balls a scene may have.</summary>
    public const int MostBalls = 64;

    /// <summary>The fastest ball or stick that a scene may have, m/s; a strong break is about 13 m/s.</summary>
    public const double Fastest = 30.0;

    private const double RightAngle = 0.5 * Math.PI;
    private const string EachField = "the default of each field";
    private const string AsPreset = "as the table's preset";
    private const string AsPocketedPreset = "as the table's preset, or as on the default table if that has none";

    internal static Section<Scene> Root { get; } = new(
        new WordField<Scene>(
            "longrail", [Scene.Format], s => s.FormatName, (s, v) => s.FormatName = v,
            Scene.Format, "The format of this file."),
        new TextField<Scene>("title", s => s.Title, (s, v) => s.Title = v, null, "A title for people."),
        new TextField<Scene>("notes", s => s.Notes, (s, v) => s.Notes = v, null, "Remarks for people."),
        new PartField<Scene, SceneTable>(
            "table", Table, s => s.Table, (s, v) => s.Table = v, EachField, "Bed and pockets."),
        new PartField<Scene, SceneCloth>(
            "cloth", Cloth, s => s.Cloth, (s, v) => s.Cloth = v, EachField, "The cloth."),
        new PartField<Scene, SceneCushion>(
            "cushion", Cushion, s => s.Cushion, (s, v) => s.Cushion = v, EachField, "The cushions, all alike."),
        new PartField<Scene, SceneBallSet>(
            "ballSet", BallSet, s => s.BallSet, (s, v) => s.BallSet = v, EachField, "The balls in general."),
        new PartField<Scene, SceneCue>(
            "cue", Cue, s => s.Cue, (s, v) => s.Cue = v, EachField, "The cue."),
        new ListField<Scene, SceneBall>(
            "balls", Ball, MostBalls, ["id"],
            s => s.Balls.Count > 0 ? s.Balls : null, (s, v) => s.Balls = v, ball => ball.Id,
            null, "The balls on the table; at least one."),
        new PartField<Scene, SceneStroke>(
            "stroke", Stroke, s => s.Stroke, (s, v) => s.Stroke = v, "no stroke", "The stroke.")
        {
            Replaces = s => s.Launch = null,
        },
        new ListField<Scene, SceneLaunch>(
            "launch", Launch, MostBalls, ["ball"], s => s.Launch, (s, v) => s.Launch = v, launch => launch.Ball,
            "no ball moves", "Balls that are already moving, instead of a stroke."));

    /// <summary>All fields, in the order in which a scene is written.</summary>
    public static IReadOnlyList<FieldInfo> All { get; } = ListAll();

    /// <summary>The path of the one field with that name, or null if there is none or more than one.</summary>
    /// <param name="name">A field's name alone, as in "cueSpeed".</param>
    public static string? PathEndingIn(string name)
    {
        string? found = null;
        foreach (FieldInfo field in All)
        {
            if (!field.Path.EndsWith("." + name, StringComparison.OrdinalIgnoreCase))
                continue;
            if (found is not null)
                return null;
            found = field.Path;
        }

        return found;
    }

    private static List<FieldInfo> ListAll()
    {
        var fields = new List<FieldInfo>();
        foreach (Field<Scene> field in Root.Fields)
            field.List("", fields);
        return fields;
    }

    private static string[] Names<T>(IReadOnlyList<T> presets, Func<T, string> nameOf) => [.. presets.Select(nameOf)];

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
