using System.Text;

namespace Longrail.Scenes;

/// <summary>One thing that is wrong with a scene: where, what, and what would be right.</summary>
/// <param name="Path">The field, as in "stroke.tip.right" or "balls[1].x"; empty for the file as a whole.</param>
/// <param name="Problem">What is wrong, in a few words without a full stop.</param>
/// <param name="Allowed">What is allowed there, or null.</param>
/// <param name="Suggestion">What was probably meant, or null.</param>
public sealed record SceneError(string Path, string Problem, string? Allowed = null, string? Suggestion = null)
{
    /// <summary>The file, if it is known.</summary>
    public string? File { get; init; }

    /// <summary>The line in the file, counted from 1, if it is known.</summary>
    public int? Line { get; init; }

    /// <summary>The column in bytes, counted from 1, if it is known.</summary>
    public int? Column { get; init; }

    /// <summary>The whole message on one line.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        if (File is not null)
            text.Append(File);
        if (Line is not null)
            text.Append(text.Length > 0 ? ":" : "line ").Append(Line).Append(':').Append(Column);
        if (text.Length > 0)
            text.Append(": ");
        if (Path.Length > 0)
            text.Append(Path).Append(": ");
        text.Append(Problem);
        if (Allowed is not null)
            text.Append("; allowed: ").Append(Allowed);
        if (Suggestion is not null)
            text.Append("; did you mean ").Append(Suggestion).Append('?');
        return text.ToString();
    }
}
