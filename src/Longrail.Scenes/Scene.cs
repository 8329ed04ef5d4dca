using Longrail.Physics.Contacts;
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

    /// <summary>A copy in which nothing has been decided about the shot yet: of its stroke only the ball and the
    /// elevation are left.</summary>
    /// <remarks>For questions about the layout: an aim that is not to be found does not stand in their way.</remarks>
    public Scene AsLayout()
    {
        Scene copy = Copy();
        if (copy.Stroke is { } stroke)
            copy.Stroke = new SceneStroke { Ball = stroke.Ball, Elevation = stroke.Elevation };
        return copy;
    }

    /// <summary>A copy that is played with a stroke: the numbers are written as they are, so that the same shot comes
    /// out bit for bit. A launch is left out.</summary>
    /// <param name="ball">The id of the ball that is struck.</param>
    /// <param name="stroke">The stroke.</param>
    public Scene WithStroke(string ball, Stroke stroke)
    {
        Scene copy = Copy();
        copy.Launch = null;
        copy.Stroke = new SceneStroke
        {
            Ball = ball,
            Aim = new SceneAim { Angle = stroke.Aim },
            Speed = stroke.Speed,
            Tip = new SceneTip { Right = stroke.OffsetRight, Above = stroke.OffsetAbove },
            Elevation = stroke.Elevation,
        };
        return copy;
    }

    /// <summary>A copy with another title.</summary>
    /// <param name="title">The title, or null for none.</param>
    public Scene WithTitle(string? title)
    {
        Scene copy = Copy();
        copy.Title = title;
        return copy;
    }

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
