using Longrail.Coaching.Charts;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Scenes;
using Longrail.TestKit;

namespace Longrail.Coaching.Tests.Charts;

/// <summary>Charts and maps for the tests.</summary>
internal static class ChartCases
{
    internal static EquipmentSpec Standard { get; } = EquipmentPresets.With(EquipmentPresets.DefaultTable);

    /// <summary>No friction, no loss, nose at centre height, usual pockets: a ball goes like a ray of light until it
    /// drops.</summary>
    internal static EquipmentSpec Lossless { get; } =
        TestEquipment.Lossless.WithTable(_ => TestEquipment.Pocketed.Table);

    internal static ChartRoute Route(
        BankKind kind, PocketName? pocket = null, CushionName? off = null, Vec2? target = null,
        EquipmentSpec? equipment = null)
    {
        var errors = new List<SceneError>();
        ChartRoute? route = ChartRoutes.Resolve(kind, pocket, off, target, (equipment ?? Standard).Table, errors);
        Assert.Empty(errors);
        return route!;
    }

    internal static ChartTip Tip(double tips, EquipmentSpec? equipment = null)
    {
        EquipmentSpec e = equipment ?? Standard;
        double right = TipContact.ContactOffset(tips * e.Cue.TipDiameter, 0.5 * e.BallSet.Diameter, e.Cue);
        return new ChartTip(right, $"{tips} tip");
    }

    internal static ChartRequest Request(ChartRoute route, ChartPlaces places, params double[] speeds) => new()
    {
        Equipment = Standard,
        Route = route,
        Places = places,
        Speeds = speeds,
        Tips = [Tip(0)],
        Height = route.IsKick ? CueHeight.Follow : CueHeight.Stun,
        Distance = Standard.Table.DiamondAlong,
    };

    internal static ChartPlaces At(double along, double across) =>
        ChartPlaces.Line(new Vec2(along, across), new Vec2(along, across), 1);

    internal static BankChart Run(ChartRequest request)
    {
        ChartAnswer answer = ChartRunner.Run(request, null, TestContext.Current.CancellationToken);
        Assert.Empty(answer.Errors);
        return answer.Chart!;
    }

    internal static OddsMap Run(MapRequest request)
    {
        MapAnswer answer = ChartRunner.Run(request, null, TestContext.Current.CancellationToken);
        Assert.Empty(answer.Errors);
        return answer.Map!;
    }

    internal static double Correction(ChartCell cell)
    {
        Assert.Equal(NoBank.None, cell.Failure);
        return cell.CorrectionDiamonds!.Value;
    }

    /// <summary>A map of one place.</summary>
    internal static MapRequest OnePlace(ChartRoute route, Vec2 ball, Vec2 cue, double speed) => new()
    {
        Equipment = Standard,
        Route = route,
        Measure = MapMeasure.Leeway,
        CueBall = cue,
        From = ball,
        To = ball,
        Columns = 1,
        Rows = 1,
        Speeds = [speed],
    };
}
