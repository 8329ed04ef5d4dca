using System.Globalization;
using System.Runtime.CompilerServices;
using Longrail.Coaching.TableCards;
using Longrail.Physics.Equipment;

namespace Longrail.Coaching.Tests;

/// <summary>The default cushion against the facts of the trade that it was fitted to. Each anchor names its
/// source.</summary>
public class TradeAnchorTests
{
    private static readonly EquipmentSpec _neutral = EquipmentPresets.With(EquipmentPresets.DefaultTable);

    [Fact]
    public void Every_anchor_holds_on_the_default_table()
    {
        // Allowance: a quarter of a diamond, or half the published band.
        Assert.All(TradeAnchors.For(_neutral), anchor => Assert.True(anchor.Holds, $"{anchor.Name}: {anchor.Residual:0.000} {anchor.Unit}"));
    }

    [Fact]
    public void The_page_on_physics_shows_what_the_defaults_give()
    {
        string page = File.ReadAllText(Path.Combine(Root(), "docs", "physics.md"));
        IReadOnlyList<Anchor> anchors = TradeAnchors.For(_neutral);
        Assert.All(anchors, anchor => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"| {anchor.Name} | {anchor.Expected:0.000} | {anchor.Computed:0.000} |"), page));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"rms is {TradeAnchors.RootMeanSquare(anchors):0.000}"), page);
    }

    [Fact]
    public void A_dead_cushion_fails_the_anchors()
    {
        // The check must be able to fail.
        EquipmentSpec dead = _neutral with { Cushion = _neutral.Cushion with { Restitution = 0.6 } };
        Assert.Contains(TradeAnchors.For(dead), anchor => !anchor.Holds);
    }

    [Fact]
    public void The_rms_is_that_of_the_diamonds_alone()
    {
        Anchor[] anchors =
        [
            new("a", "s", 1, 1.3, "diamond", 0.25), new("b", "s", 1, 0.6, "diamond", 0.25), new("c", "s", 0.5, 5, "of the speed in", 0.06),
        ];
        Assert.Equal(Math.Sqrt((0.09 + 0.16) / 2), TradeAnchors.RootMeanSquare(anchors), 12);
    }

    private static string Root([CallerFilePath] string file = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));
}
