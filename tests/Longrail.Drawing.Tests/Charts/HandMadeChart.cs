using Longrail.Coaching.Charts;
using Longrail.Coaching.Players;
using Longrail.Coaching.Statistics;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Scenes;

namespace Longrail.Drawing.Tests.Charts;

/// <summary>Charts and maps with numbers made up by formulas: drawings must not change when the physics does.</summary>
internal static class HandMadeChart
{
    private static readonly EquipmentSpec _equipment = EquipmentPresets.With(EquipmentPresets.DefaultTable);
    private static readonly EquipmentNames _names = new("pool-9ft", "played-in", "clean");

    /// <summary>Six places on a line, three tips, three speeds, one cell without an answer.</summary>
    internal static BankChart Line() => Of(ChartPlaces.Line(new Vec2(1, 2), new Vec2(3.5, 2), 6), 3);

    /// <summary>A grid of places, one tip, two speeds.</summary>
    internal static BankChart Grid() => Of(ChartPlaces.Grid(new Vec2(1, 1), new Vec2(3, 2), 5, 3), 1);

    /// <summary>More places than the table of numbers has room for.</summary>
    internal static BankChart Long() => Of(ChartPlaces.Line(new Vec2(1, 2), new Vec2(3.5, 2), 40), 3);

    /// <summary>A map with a hill of odds, or of leeway, and cells without an answer.</summary>
    internal static OddsMap Map(MapMeasure measure)
    {
        var request = new MapRequest
        {
            Equipment = _equipment,
            Names = _names,
            Route = Route(),
            Measure = measure,
            CueBall = new Vec2(2, 3),
            Columns = 17,
            Rows = 9,
            Speeds = [1.5, 2.5, 4],
            Player = measure == MapMeasure.Odds ? new Player("A & <B>", 0.003, 0.06, 0.0008, 0.0015, 0.017) : null,
            Shots = 200,
        };
        MapCell[] cells =
        [
            .. from row in Enumerable.Range(0, request.Rows)
               from column in Enumerable.Range(0, request.Columns)
               select Cell(request, request.Place(column, row)),
        ];
        return new OddsMap(request, cells, 200 * cells.Length);
    }

    private static MapCell Cell(MapRequest request, Vec2 place)
    {
        if (place.Y > 2.6)
            return new MapCell { Place = place, Failure = NoBank.TooThin };
        if (Math.Abs(place.X - 4) < 0.3)
            return new MapCell { Place = place, Failure = NoBank.DoubleKiss };
        double hill = Math.Exp(-0.5 * ((place.X - 2.5) * (place.X - 2.5) + (place.Y - 1) * (place.Y - 1)));
        return new MapCell
        {
            Place = place,
            Failure = NoBank.None,
            Speed = 2.5,
            Aim = 0,
            Leeway = 0.01 * hill,
            Made = request.Measure == MapMeasure.Odds ? Odds.Of((int)Math.Round(190 * hill), 200) : null,
        };
    }

    private static BankChart Of(ChartPlaces places, int tips)
    {
        double[] speeds = tips == 1 ? [2, 4.5] : [2, 3, 4.5];
        ChartTip[] all = [new(-0.001, "-1/8 tip"), new(0, "0"), new(0.001, "1/8 tip")];
        var request = new ChartRequest
        {
            Equipment = _equipment,
            Names = _names,
            Route = Route(),
            Places = places,
            Speeds = speeds,
            Tips = tips == 1 ? [all[1]] : all,
            Height = CueHeight.Stun,
            Distance = _equipment.Table.DiamondAlong,
        };
        return new BankChart(request, [.. places.Diamonds.Select(place => Row(request, place))]);
    }

    private static ChartRow Row(ChartRequest request, Vec2 place)
    {
        double mirror = place.X + (4 - place.X) * 0.4;
        ChartCell[] cells =
        [
            .. from tip in Enumerable.Range(0, request.Tips.Count)
               from speed in request.Speeds
               select tip == 1 && speed == 2 && place.X > 3.2
                   ? new ChartCell { Failure = NoBank.DoubleKiss }
                   : Answer(mirror, 0.08 * (speed - 2.9) * (4 - place.X) / 2 - 0.01 * tip),
        ];
        TableSpec table = request.Equipment.Table;
        return new ChartRow(place, new Vec2(mirror * table.DiamondAlong, 0.03), mirror, cells);
    }

    private static ChartCell Answer(double mirror, double correction) => new()
    {
        Failure = NoBank.None,
        CorrectionDiamonds = correction,
        Correction = correction,
        Number = mirror + correction,
    };

    private static ChartRoute Route()
    {
        var errors = new List<SceneError>();
        return ChartRoutes.Resolve(BankKind.CrossSide, null, null, null, _equipment.Table, errors)!;
    }
}
