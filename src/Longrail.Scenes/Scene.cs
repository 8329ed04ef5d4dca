using Longrail.Scenes.Parts;

namespace Longrail.Scenes;

/// <summary>A scene as it was asked for: what a file says, and nothing that it leaves out.</summary>
/// <remarks>Whatever is null takes its default when the scene is made ready . A scene is
/// not changed after it has been read; <see cref="Fields.SceneSetting.With"/> gives a changed copy.</remarks>
public sealed class Scene
{
    /// <summary>The format's name and version, the value of the field "longrail".</summary>
    public const string Format = "scene/1";

    /// <summary>The format as the file states it, or null.</summary>
    public string? FormatName { get; internal set; }

    /// <summary>A title for people, or null.</summary>
    public string? Title { get; internal set; }

    /// <summary>Remarks for people, or null.</summary>
    public string? Notes { get; internal set; }

    /// <summary>Bed and pockets.</summary>
    public SceneTable? Table { get; internal set; }

    /// <summary>The cloth.</summary>
    public SceneCloth? Cloth { get; internal set; }

    /// <summary>The cushions.</summary>
    public SceneCushion? Cushion { get; internal set; }

    /// <summary>The balls in general.</summary>
    public SceneBallSet? BallSet { get; internal set; }

    /// <summary>The cue.</summary>
    public SceneCue? Cue { get; internal set; }

    /// <summary>The balls one by one.</summary>
    public List<SceneBall> Balls { get; internal set; } = [];

    /// <summary>The stroke, or null.</summary>
    public SceneStroke? Stroke { get; internal set; }

    /// <summary>Balls already moving, or null.</summary>
    public List<SceneLaunch>? Launch { get; internal set; }

    /// <summary>A copy that shares nothing with this scene.</summary>
    public Scene Copy() => new()
    {
        FormatName = FormatName,
        Title = Title,
        Notes = Notes,
        Table = Table?.Copy(),
        Cloth = Cloth is null ? null : Cloth with { },
        Cushion = Cushion is null ? null : Cushion with { },
        BallSet = BallSet?.Copy(),
        Cue = Cue is null ? null : Cue with { },
        Balls = Balls.ConvertAll(ball => ball.Copy()),
        Stroke = Stroke?.Copy(),
        Launch = Launch?.ConvertAll(launch => launch with { }),
    };
}
