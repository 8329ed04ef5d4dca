using System.Globalization;

namespace Longrail.Scenes.Compiling;

/// <summary>What is found wrong while a scene is made ready.</summary>
internal sealed class SceneErrors
{
    private const int MostErrors = 20;
    private List<SceneError>? _errors;

    /// <summary>Whether nothing is wrong so far.</summary>
    public bool IsEmpty => _errors is null;

    /// <summary>Whether what was asked for cannot be computed.</summary>
    public bool IsUnreachable { get; set; }

    /// <summary>The errors so far.</summary>
    public IReadOnlyList<SceneError> All => _errors ?? (IReadOnlyList<SceneError>)[];

    /// <summary>Notes an error.</summary>
    public void Add(string path, string problem, string? allowed = null, string? suggestion = null)
    {
        _errors ??= [];
        if (_errors.Count < MostErrors)
            _errors.Add(new SceneError(path, problem, allowed, suggestion));
    }

    /// <summary>A length for a message: millimetres with one decimal, with more where that would show
    /// nothing.</summary>
    public static string Millimetres(double metres)
    {
        double mm = metres * 1000.0;
        string format = Math.Abs(mm) >= 0.05 ? "0.0" : "0.######";
        return mm.ToString(format, CultureInfo.InvariantCulture) + " mm";
    }
}
