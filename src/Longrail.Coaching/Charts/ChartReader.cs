using System.Globalization;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots.Readings;
using Longrail.Scenes;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;

namespace Longrail.Coaching.Charts;

/// <summary>Reads questions for charts and maps, and fills in what they leave out.</summary>
public sealed class ChartReader
{
    private const string DefaultSpeeds = "2 m/s,3 m/s,4.5 m/s";
    private const string DefaultMapSpeeds = "1.5 m/s,2 m/s,2.5 m/s,3.2 m/s,4 m/s";
    private const string DefaultTips = "-1/8 tip,0,1/8 tip";
    private const string DefaultDistance = "1 diamond";
    private const int MostPlacesOnLine = 60;

    private readonly List<SceneError> _errors = [];
    private readonly ChartQuestion _question;
    private readonly EquipmentSpec _equipment;
    private readonly EquipmentNames _names;
    private readonly ChartTexts _texts;

    private ChartReader(ChartQuestion question)
    {
        _question = question;
        (_equipment, _names) = Equipment(question, new ChartTexts(null, _errors));
        _texts = new ChartTexts(_equipment.Table, _errors);
    }

    /// <summary>The request of a question, or what is wrong with it.</summary>
    /// <param name="question">The question.</param>
    public static ChartReading Read(ChartQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var reader = new ChartReader(question);
        ChartRequest? chart = question.Map is null ? reader.Chart() : null;
        MapRequest? map = question.Map is null ? null : reader.Map();
        return reader._errors.Count > 0
            ? new ChartReading(null, null, reader._errors)
            : new ChartReading(chart, map, []);
    }

    private ChartRequest? Chart()
    {
        Refuse("a map", (_question.Cue, "cue"), (_question.Seed, "seed"), (_question.Shots, "shots"));
        if (_question.Player is not null)
            _errors.Add(new SceneError("player", "only a map has a player", "--map odds"));
        if (Route() is not { } route)
            return null;
        if (route.IsKick && _question.Distance is not null)
            _errors.Add(new SceneError("distance", "a kick has no object ball", "no distance"));
        return new ChartRequest
        {
            Equipment = _equipment,
            Names = _names,
            Route = route,
            Places = Places(route),
            Speeds = Speeds(DefaultSpeeds),
            Tips = Tips(DefaultTips),
            Height = Height(route.IsKick ? CueHeight.Follow : CueHeight.Stun),
            Distance = Distance(),
            Numbering = (DiamondNumbering)_texts.Word("numbering", _question.Numbering, DiamondNumbers.Words, 0),
            Unit = (ChartUnit)_texts.Word("unit", _question.Unit, ChartWords.Units, 0),
        };
    }

    private MapRequest? Map()
    {
        Refuse(
            "a chart of corrections", (_question.Line, "line"), (_question.Places, "places"),
            (_question.Distance, "distance"), (_question.Numbering, "numbering"), (_question.Unit, "unit"));
        var measure = (MapMeasure)_texts.Word("map", _question.Map, ChartWords.Measures, 0);
        if (measure == MapMeasure.Leeway)
        {
            Refuse(
                "a map of odds", (_question.Player?.Name, "player"), (_question.Seed, "seed"),
                (_question.Shots, "shots"));
        }

        if (Route() is not { } route)
            return null;
        List<ChartTip> tips = Tips("0");
        if (tips.Count > 1)
            _errors.Add(new SceneError("tips", "a map shows one place of the tip", "one"));
        (Vec2 from, Vec2 to) = Area() ?? (Vec2.Zero, new Vec2(8, 4));
        (int columns, int rows) = _texts.Grid(_question.Grid) ?? (33, 17);
        return new MapRequest
        {
            Equipment = _equipment,
            Names = _names,
            Route = route,
            Measure = measure,
            CueBall = CueBall(route),
            From = from,
            To = to,
            Columns = columns,
            Rows = rows,
            Speeds = Speeds(DefaultMapSpeeds),
            Tip = tips.Count > 0 ? tips[0] : new ChartTip(0, "0"),
            Height = Height(CueHeight.Centre),
            Player = _question.Player,
            Seed = ulong.TryParse(
                _question.Seed ?? "1", NumberStyles.None, CultureInfo.InvariantCulture, out ulong seed)
                ? seed
                : _texts.Wrong("seed", _question.Seed!, "a whole number from 0", 0UL),
            Shots = _texts.Whole("shots", _question.Shots, 400, MapRequest.MostShots),
        };
    }

    private (EquipmentSpec Equipment, EquipmentNames Names) Equipment(ChartQuestion question, ChartTexts texts)
    {
        if (question.Scene is { } ready)
        {
            if (question.Table is not null)
                _errors.Add(new SceneError("table", "the scene has a table already", "a scene or a table"));
            Scene used = ready.AsUsed;
            return (
                ready.Setup.Equipment,
                new EquipmentNames(used.Table?.Preset, used.Cloth?.State, used.BallSet?.State));
        }

        IReadOnlyList<string> tables = [.. EquipmentPresets.Tables.Select(table => table.Name)];
        int standard = EquipmentPresets.Tables.ToList().IndexOf(EquipmentPresets.DefaultTable);
        TablePreset preset = EquipmentPresets.Tables[texts.Word("table", question.Table, tables, standard)];
        return (
            EquipmentPresets.With(preset),
            new EquipmentNames(
                preset.Name, EquipmentPresets.DefaultClothCondition.Name, EquipmentPresets.DefaultBallCondition.Name));
    }

    private ChartRoute? Route()
    {
        if (_question.Bank is null)
            _errors.Add(new SceneError("bank", "no bank is named", string.Join(", ", ChartWords.Kinds)));
        var kind = (BankKind)_texts.Word("bank", _question.Bank, ChartWords.Kinds, 0);
        PocketName? pocket = _question.Pocket is null
            ? null
            : (PocketName)_texts.Word("pocket", _question.Pocket, TableWords.Pockets, 0);
        CushionName? off = _question.Off is null
            ? null
            : (CushionName)_texts.Word("off", _question.Off, TableWords.Cushions, 0);
        Vec2? target = Target();
        return _errors.Count > 0
            ? null
            : ChartRoutes.Resolve(kind, pocket, off, target, _equipment.Table, _errors);
    }

    private Vec2? Target()
    {
        if (_question.Target is not { } text)
            return null;
        if (_question.Scene?.IndexOf(text) is { } ball and >= 0)
            return _question.Scene.Setup.Balls[ball].Start.Position;
        if (!text.Contains(',', StringComparison.Ordinal))
        {
            string allowed = _question.Scene is { } scene
                ? $"ALONG,ACROSS or {string.Join(", ", scene.BallIds)}"
                : "ALONG,ACROSS";
            _errors.Add(new SceneError("target", $"there is no ball \"{text}\"", allowed));
            return null;
        }

        Vec2 place = _texts.Place("target", text);
        return new Vec2(place.X * _equipment.Table.DiamondAlong, place.Y * _equipment.Table.DiamondAcross);
    }

    private CueHeight Height(CueHeight standard) =>
        (CueHeight)_texts.Word("height", _question.Height, ChartWords.Heights, (int)standard);

    private ChartPlaces Places(ChartRoute route)
    {
        if (_question.Line is not null && (_question.Grid is not null || _question.BallArea is not null))
            _errors.Add(new SceneError("line", "both a line and a grid are given", "one of the two"));
        if (_question.Grid is not null || _question.BallArea is not null)
        {
            (Vec2 from, Vec2 to) = Area() ?? (new Vec2(1, 1), new Vec2(7, 3));
            (int columns, int rows) = _texts.Grid(_question.Grid) ?? (7, 3);
            return (long)columns * rows <= ChartPlaces.Most
                ? ChartPlaces.Grid(from, to, columns, rows)
                : _texts.Wrong(
                    "grid", _question.Grid!, $"up to {ChartPlaces.Most} places in all", ChartPlaces.Grid(from, to, 1, 1));
        }

        (Vec2 first, Vec2 last) = _question.Line is { } line
            ? _texts.Pair("line", line) ?? (new Vec2(1, 2), new Vec2(2, 2))
            : UsualPlaces.Of(route);
        return _question.Places is null
            ? ChartPlaces.HalfDiamonds(first, last)
            : ChartPlaces.Line(first, last, _texts.Whole("places", _question.Places, 1, MostPlacesOnLine));
    }

    private Vec2 CueBall(ChartRoute route)
    {
        if (_question.Cue is { } text)
            return _texts.Place("cue", text);
        if (_question.Scene is not { } scene)
            return UsualPlaces.CueBall(route);
        int struck = scene.Setup.Stroke?.Ball ?? Math.Max(scene.IndexOf("cue"), 0);
        Vec2 at = scene.Setup.Balls[struck].Start.Position;
        return new Vec2(at.X / _equipment.Table.DiamondAlong, at.Y / _equipment.Table.DiamondAcross);
    }

    private List<double> Speeds(string standard) =>
    [
        .. (_question.Speeds ?? standard).Split(',')
            .Select(text => _texts.Quantity(
                "speeds", text, QuantityKind.Speed, new NumberRange(0, SceneFields.Fastest, WithoutLeast: true)))
            .Select(speed => speed.Value),
    ];

    private List<ChartTip> Tips(string standard) =>
    [
        .. (_question.Tips ?? standard).Split(',').Select(text =>
        {
            Quantity offset = _texts.Quantity("tips", text, QuantityKind.TipOffset, NumberRange.Any);
            double radius = 0.5 * _equipment.BallSet.Diameter;
            double metres = offset.Unit switch
            {
                RelativeUnit.BallRadius => offset.Value * radius,
                RelativeUnit.TipWidth =>
                    TipContact.ContactOffset(offset.Value * _equipment.Cue.TipDiameter, radius, _equipment.Cue),
                _ => offset.Value,
            };
            return new ChartTip(metres, text.Trim());
        }),
    ];

    private double Distance()
    {
        Quantity distance = _texts.Quantity(
            "distance", _question.Distance ?? DefaultDistance, QuantityKind.Place, new NumberRange(0, 10));
        return distance.Unit == RelativeUnit.Diamond ? distance.Value * _equipment.Table.DiamondAlong : distance.Value;
    }

    private (Vec2 From, Vec2 To)? Area() => _question.BallArea is { } text ? _texts.Pair("ball-area", text) : null;

    private void Refuse(string whose, params (string? Value, string Path)[] given)
    {
        foreach ((string? value, string path) in given)
        {
            if (value is not null)
                _errors.Add(new SceneError(path, $"belongs to {whose}", "leave it out"));
        }
    }
}
