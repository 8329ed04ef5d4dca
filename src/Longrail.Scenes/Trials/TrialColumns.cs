using System.Text;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Trials;

/// <summary>The columns of a trial's results: what each holds, and in which unit its name says.</summary>
internal sealed class TrialColumns
{
    private const string Diamonds = "landing_diamonds";

    // Columns are named as spreadsheets allow; the unit's usual sign beside it.
    private static readonly (string Name, string Unit)[] _landings =
        [("landing_mm", "mm"), ("landing_cm", "cm"), ("landing_m", "m"), ("landing_in", "in"), (Diamonds, "")];

    private static readonly (string Name, string Unit)[] _speeds =
        [("speed_mps", "m/s"), ("speed_mph", "mph"), ("speed_kmh", "km/h"), ("speed_ftps", "ft/s")];

    private static readonly (string Name, string Unit)[] _rollOuts =
        [("rollout_mm", "mm"), ("rollout_cm", "cm"), ("rollout_m", "m"), ("rollout_in", "in"), ("rollout_ft", "ft")];

    private static readonly string[] _plain = ["shot", "condition", "made", "note"];

    internal int Shot { get; private set; } = -1;

    internal int Condition { get; private set; } = -1;

    internal int Landing { get; private set; } = -1;

    internal double LandingFactor { get; private set; } = 1;

    internal int Speed { get; private set; } = -1;

    internal double SpeedFactor { get; private set; } = 1;

    internal bool SpeedIsRollOut { get; private set; }

    internal int Made { get; private set; } = -1;

    internal IReadOnlyList<string> Names { get; private set; } = [];

    /// <summary>Names that a table may have.</summary>
    internal static IEnumerable<string> Known =>
        _plain.Concat(_landings.Concat(_speeds).Concat(_rollOuts).Select(column => column.Name));

    /// <summary>Reads the head of a table; what is wrong goes to the list.</summary>
    /// <param name="names">The names as they stand there.</param>
    /// <param name="diamond">Length of a diamond, metres, or null.</param>
    /// <param name="wrong">Takes the index of the column, or -1, and what is wrong with it.</param>
    internal static TrialColumns Of(string[] names, double? diamond, Action<int, SceneError> wrong)
    {
        var columns = new TrialColumns { Names = [.. names.Select(name => name.Trim().ToLowerInvariant())] };
        for (int i = 0; i < names.Length; i++) columns.Take(i, diamond, wrong);
        if (columns.Condition < 0)
            wrong(-1, new SceneError(
                "condition", $"there is no such column among {string.Join(", ", columns.Names)}",
                "one that says which condition was played"));
        if (columns.Landing < 0 && columns.Made < 0)
            wrong(-1,
                new SceneError("", "nothing is measured", "a column landing_mm (or _cm, _m, _in, _diamonds) or made"));
        return columns;
    }

    private void Take(int i, double? diamond, Action<int, SceneError> wrong)
    {
        string name = Names[i];
        if (Names.Take(i).Contains(name))
        {
            wrong(i, new SceneError(name, "stands twice in the head", "each column once"));
        }
        else if (name == Diamonds)
        {
            if (diamond is null)
                wrong(i, new SceneError(
                    name, "without the plan it is not known how long a diamond is", "--plan, or landing_mm"));
            TakeLanding(i, diamond ?? 1, wrong);
        }
        else if (Factor(_landings, name) is { } landing)
        {
            TakeLanding(i, landing, wrong);
        }
        else if (Factor(_speeds, name) is { } speed)
        {
            TakeSpeed(i, speed, false, wrong);
        }
        else if (Factor(_rollOuts, name) is { } distance)
        {
            TakeSpeed(i, distance, true, wrong);
        }
        else
        {
            TakePlain(i, name, wrong);
        }
    }

    private void TakePlain(int i, string name, Action<int, SceneError> wrong)
    {
        switch (name)
        {
            case "shot": Shot = i; break;
            case "condition": Condition = i; break;
            case "made": Made = i; break;
            case "note": break;
            default:
                wrong(i, new SceneError(name, "unknown column", string.Join(", ", Known), NearestWord.Of(name, Known)));
                break;
        }
    }

    private void TakeLanding(int i, double factor, Action<int, SceneError> wrong)
    {
        if (Landing >= 0)
            wrong(i, new SceneError(Names[i], $"the landing stands in {Names[Landing]} already", "one of them"));
        (Landing, LandingFactor) = (i, factor);
    }

    private void TakeSpeed(int i, double factor, bool isRollOut, Action<int, SceneError> wrong)
    {
        if (Speed >= 0)
            wrong(i, new SceneError(Names[i], $"the speed stands in {Names[Speed]} already", "one of them"));
        (Speed, SpeedFactor, SpeedIsRollOut) = (i, factor, isRollOut);
    }

    private static double? Factor((string Name, string Unit)[] columns, string name)
    {
        foreach ((string known, string unit) in columns)
        {
            if (known == name) return UnitTable.Find(Encoding.UTF8.GetBytes(unit))!.Factor;
        }

        return null;
    }
}
