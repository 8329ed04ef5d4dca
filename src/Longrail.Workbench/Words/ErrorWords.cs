using System.Text;
using Longrail.Scenes;

namespace Longrail.Workbench.Words;

/// <summary>An error of a scene as a sentence on the page.</summary>
internal static class ErrorWords
{
    /// <summary>What is wrong, what is allowed, what was probably meant.</summary>
    public static string Of(SceneError error)
    {
        var text = new StringBuilder();
        if (error.Line is { } line)
            text.Append("Line ").Append(line).Append(": ");
        if (error.Path.Length > 0)
            text.Append(error.Path).Append(": ");
        text.Append(error.Problem).Append('.');
        if (error.Allowed is not null)
            text.Append(" Allowed: ").Append(error.Allowed).Append('.');
        if (error.Suggestion is not null)
            text.Append(" Did you mean ").Append(error.Suggestion).Append('?');
        return text.ToString();
    }
}
