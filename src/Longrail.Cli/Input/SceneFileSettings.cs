using System.ComponentModel;
using Spectre.Console.Cli;

namespace Longrail.Cli.Input;

/// <summary>The argument of every verb that works on a scene.</summary>
public class SceneFileSettings : CommandSettings
{
    /// <summary>The scene file, or "-".</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The scene file; - is standard input")]
    public string File { get; init; } = "";
}
