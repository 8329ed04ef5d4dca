using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;

namespace Longrail.Coaching.Charts;

/// <summary>What must be said beside the numbers of a chart or a map, wherever they are shown.</summary>
public static class ChartSentences
{
    private const double MilePerHour = 0.44704;

    /// <summary>How the shots of a chart are played.</summary>
    public static string Played(ChartRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (request.Route.IsKick)
            return $"The cue ball alone, struck for {Height(request.Height)} with a level stick.";
        double diamonds = request.Distance / request.Equipment.Table.DiamondAlong;
        return Text($"The cue ball hits the ball full from {1000 * request.Distance:0.#} mm ({diamonds:0.##} diamond) ")
            + $"away, struck for {Height(request.Height)} with a level stick.";
    }

    /// <summary>How the shots of a map are played.</summary>
    public static string Played(MapRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        string speeds = string.Join(", ", request.Speeds.Select(v => v.ToString("0.##", CultureInfo.InvariantCulture)));
        string best = request.Speeds.Count > 1 ? Text($"each place at the best of {speeds} m/s") : $"at {speeds} m/s";
        return Text($"Cue ball at {request.CueBall.X:0.##}, {request.CueBall.Y:0.##}; {best}, ")
            + $"struck for {Height(request.Height)}, tip {ChartNumbers.Tip(request.Tip)}, level stick.";
    }

    /// <summary>Which way the corrections count.</summary>
    public static string Sense(BankChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        string longer = "+ is longer: touch the cushion farther along, the way the bank travels";
        string numbers = Direction(chart) switch
        {
            > 0 => " (here towards higher numbers)",
            < 0 => " (here towards lower numbers)",
            _ => "",
        };
        return $"{longer}{numbers}; - is shorter.";
    }

    /// <summary>One number of the chart in words, as an example of how to read it; null if there is none.</summary>
    public static string? Example(BankChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        ChartRequest request = chart.Request;
        int speed = request.Speeds.Count - 1;
        int tip = request.Tips.ToList().FindIndex(t => t.Right == 0) is var centre and >= 0 ? centre : 0;
        int row =
            Enumerable.Range(0, chart.Rows.Count).FirstOrDefault(k => chart[k, tip, speed].Failure == NoBank.None, -1);
        if (row < 0)
            return null;
        ChartCell cell = chart[row, tip, speed];
        ChartRow at = chart.Rows[row];
        double value = ChartNumbers.Correction(request, cell)!.Value;
        string unit = request.Unit == ChartUnit.Diamond && request.Numbering != DiamondNumbering.Tens
            ? " diamond"
            : request.Unit == ChartUnit.Diamond ? "" : $" {ChartWords.Of(request.Unit)}";
        string size = ChartNumbers.WithSign(request, Math.Abs(value)).TrimStart('+');
        string aim = size.Any(c => c is >= '1' and <= '9')
            ? $"{size}{unit} {(value > 0 ? "longer" : "shorter")} than the mirror"
            : "as the mirror";
        string place = $"{ChartNumbers.Diamond(at.Place.X)}, {ChartNumbers.Diamond(at.Place.Y)}";
        string stroke = $"{ChartNumbers.Speed(request.Speeds[speed])}, tip {ChartNumbers.Tip(request.Tips[tip])}";
        string mirror = ChartNumbers.Number(request, at.MirrorNumber);
        return $"From {place} at {stroke}: hit it {aim}, at {ChartNumbers.Number(request, cell.Number)} "
            + $"instead of {mirror}.";
    }

    /// <summary>What the speeds are.</summary>
    public static string Speeds(IReadOnlyList<double> speeds)
    {
        ArgumentNullException.ThrowIfNull(speeds);
        string miles =
            string.Join(", ", speeds.Select(v => (v / MilePerHour).ToString("0.0", CultureInfo.InvariantCulture)));
        return $"Speeds are the cue ball's as it leaves the tip ({miles} mph).";
    }

    /// <summary>How places are counted.</summary>
    public static string Places(ChartRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        string cushion = TableWords.Of(request.Route.Off);
        return $"Numbers on the {cushion} cushion are {DiamondNumbers.Sentence(request.Numbering)}; "
            + "places of balls are their centres' in diamonds, along from the head, across from the right.";
    }

    /// <summary>The table, cloth, cushions and balls on one line.</summary>
    public static string Equipment(EquipmentSpec equipment, EquipmentNames names)
    {
        ArgumentNullException.ThrowIfNull(equipment);
        ArgumentNullException.ThrowIfNull(names);
        string law = equipment.Cushion.Law == CushionLaw.Yielding ? "yielding" : "impulse";
        return Text($"{names.Table ?? "table"}, {equipment.Table.Length:0.###} x {equipment.Table.Width:0.###} m, ")
            + $"cloth {names.Cloth ?? "as given"}, balls {names.Balls ?? "as given"}, cushions {law}";
    }

    /// <summary>The signs that occur, each with what it means.</summary>
    public static IReadOnlyList<string> Signs(IEnumerable<NoBank> failures) =>
        [.. failures.Select(failure => $"{ChartWords.Sign(failure)} {ChartWords.Sentence(failure)}")];

    /// <summary>What a map's numbers are.</summary>
    public static string Measured(OddsMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        MapRequest request = map.Request;
        if (request.Measure == MapMeasure.Leeway)
            return "How far the aim may be off either way, from the middle of what makes the bank.";
        double half = 100 * (map.TypicalHalfWidth ?? 0);
        return $"The chance in % that the player ({request.Player!.Name}) makes it and keeps the cue ball: "
            + Text($"{request.Shots} shots a place, seed {request.Seed}; 95 % interval typically +-{half:0.0} %.");
    }

    private static string Height(CueHeight height) => height switch
    {
        CueHeight.Stun => "stun",
        CueHeight.Follow => "natural roll",
        _ => "neither draw nor follow (centre)",
    };

    // +1 or -1 if longer is the same way along the cushion for all places, else 0.
    private static int Direction(BankChart chart)
    {
        int[] signs =
        [
            .. chart.Rows.Where(row => row.MirrorTouch is not null).Select(row =>
            {
                double start = Diamonds.IsLong(chart.Request.Route.Off) ? row.Place.X : row.Place.Y;
                double end =
                    Diamonds.Along(chart.Request.Route.Off, row.MirrorTouch!.Value, chart.Request.Equipment.Table);
                return end < start ? -1 : 1;
            }),
        ];
        return signs.Length > 0 && signs.All(sign => sign == signs[0]) ? signs[0] : 0;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
