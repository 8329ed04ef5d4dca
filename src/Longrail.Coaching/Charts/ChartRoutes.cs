using System.Globalization;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Scenes;

namespace Longrail.Coaching.Charts;

/// <summary>Finds out which cushion and which pocket a bank means on a table.</summary>
public static class ChartRoutes
{
    /// <summary>Where a kick goes that is given no target: the foot spot, in diamonds along and across.</summary>
    public static Vec2 FootSpot { get; } = new(6, 2);

    /// <summary>The route, with what is not said filled in: a bank goes into the left side, or a corner on the left,
    /// unless cushion or pocket say otherwise; a kick goes off the left cushion to the foot spot.</summary>
    /// <param name="kind">The bank.</param>
    /// <param name="pocket">The pocket, or null.</param>
    /// <param name="off">The cushion, or null.</param>
    /// <param name="target">For a kick, where to, metres; or null.</param>
    /// <param name="table">The table.</param>
    /// <param name="errors">Gets what is wrong.</param>
    /// <returns>The route, or null if anything is wrong.</returns>
    public static ChartRoute? Resolve(
        BankKind kind, PocketName? pocket, CushionName? off, Vec2? target, TableSpec table,
        ICollection<SceneError> errors)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(errors);
        if (kind == BankKind.Kick)
            return Kick(pocket, off, target, table, errors);
        if (target is not null)
            errors.Add(
                new SceneError("target", $"a {ChartWords.Of(kind)} bank goes into a pocket", "--pocket, or a kick"));
        if (table.Corner is null)
        {
            errors.Add(new SceneError(
                "bank", $"this table has no pockets, so it has no {ChartWords.Of(kind)} bank",
                "kick, or a table with pockets"));
        }

        if (pocket is { } wrong && !Fits(kind, wrong))
        {
            IEnumerable<string> right = Enum.GetValues<PocketName>().Where(p => Fits(kind, p)).Select(TableWords.Of);
            errors.Add(new SceneError(
                "pocket", $"a {ChartWords.Of(kind)} bank does not go into {TableWords.Of(wrong)}",
                string.Join(", ", right)));
        }

        if (errors.Count > 0)
            return null;
        PocketName into = pocket ?? PocketFor(kind, off);
        CushionName needed = CushionFor(kind, into);
        if (off is { } asked && asked != needed)
        {
            errors.Add(new SceneError(
                "off",
                $"a {ChartWords.Of(kind)} bank into {TableWords.Of(into)} does not come off the "
                + $"{TableWords.Of(asked)} cushion",
                TableWords.Of(needed)));
            return null;
        }

        Vec2 mouth = new TableOutline(table).Pockets[(int)into].MouthCentre;
        return new ChartRoute(
            kind, needed, into, mouth,
            $"{ChartWords.Of(kind)} bank off the {TableWords.Of(needed)} cushion into {TableWords.Of(into)}");
    }

    /// <summary>Whether a bank of a kind goes into a pocket.</summary>
    public static bool Fits(BankKind kind, PocketName pocket)
    {
        bool isSide = pocket is PocketName.LeftSide or PocketName.RightSide;
        return kind switch
        {
            BankKind.CrossSide => isSide,
            BankKind.CrossCorner or BankKind.LongRail => !isSide,
            _ => false,
        };
    }

    private static ChartRoute? Kick(
        PocketName? pocket, CushionName? off, Vec2? target, TableSpec table, ICollection<SceneError> errors)
    {
        if (pocket is not null)
            errors.Add(new SceneError("pocket", "a kick goes to a place or a ball", "--target ALONG,ACROSS or a ball"));
        if (errors.Count > 0)
            return null;
        CushionName cushion = off ?? CushionName.Left;
        Vec2 to = target ?? new Vec2(FootSpot.X * table.DiamondAlong, FootSpot.Y * table.DiamondAcross);
        string where = string.Create(
            CultureInfo.InvariantCulture, $"{to.X / table.DiamondAlong:0.##}, {to.Y / table.DiamondAcross:0.##}");
        return new ChartRoute(
            BankKind.Kick, cushion, null, to, $"kick off the {TableWords.Of(cushion)} cushion to {where}");
    }

    private static PocketName PocketFor(BankKind kind, CushionName? off) => kind switch
    {
        BankKind.CrossSide => off == CushionName.Left ? PocketName.RightSide : PocketName.LeftSide,
        BankKind.CrossCorner => off == CushionName.Left ? PocketName.FootRight : PocketName.FootLeft,
        _ => off == CushionName.Head ? PocketName.FootLeft : PocketName.HeadLeft,
    };

    private static CushionName CushionFor(BankKind kind, PocketName pocket)
    {
        bool onLeft = pocket is PocketName.HeadLeft or PocketName.LeftSide or PocketName.FootLeft;
        bool atHead = pocket is PocketName.HeadLeft or PocketName.HeadRight;
        if (kind == BankKind.LongRail)
            return atHead ? CushionName.Foot : CushionName.Head;
        return onLeft ? CushionName.Right : CushionName.Left;
    }

}
