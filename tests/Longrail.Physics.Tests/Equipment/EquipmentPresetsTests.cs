using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;

namespace Longrail.Physics.Tests.Equipment;

/// <summary>The presets against the documents that they come from.</summary>
/// <remarks>WPA: Tournament Table and Equipment Specifications (November 2001 text). BCA: the older equipment
/// specifications. UMB: World Rules of Carom Billiard. Snooker: WPBSA, Official Rules. See docs/sources.md.</remarks>
public sealed class EquipmentPresetsTests
{
    private const double Inch = 0.0254;
    private const double Ounce = 0.028349523125;
    private const double Degree = Math.PI / 180.0;

    // Source: WPA, 100 x 50 in and 92 x 46 in, each +-1/8 in.
    [Theory]
    [InlineData("pool-9ft", 100.0, 50.0)]
    [InlineData("pool-8ft", 92.0, 46.0)]
    public void Pool_tables_have_the_size_of_the_rules(string name, double lengthInches, double widthInches)
    {
        TableSpec table = Table(name).Table;
        Assert.Equal(lengthInches, table.Length / Inch, 0.125);
        Assert.Equal(widthInches, table.Width / Inch, 0.125);
    }

    // Source: UMB, 2.84 x 1.42 m, each +-5 mm. Snooker rules: 3569 x 1778 mm, each +-13 mm.
    [Theory]
    [InlineData("carom-10ft", 2.84, 1.42, 0.005)]
    [InlineData("snooker-12ft", 3.569, 1.778, 0.013)]
    public void Other_tables_have_the_size_of_their_rules(string name, double length, double width, double tolerance)
    {
        TableSpec table = Table(name).Table;
        Assert.Equal(length, table.Length, tolerance);
        Assert.Equal(width, table.Width, tolerance);
    }

    // Source: WPA, a playing surface twice as long as wide; the 7-ft size is from memory.
    [Theory]
    [InlineData("pool-7ft")]
    [InlineData("pool-8ft")]
    [InlineData("pool-9ft")]
    [InlineData("carom-10ft")]
    public void Tables_with_diamonds_are_twice_as_long_as_wide(string name) =>
        Assert.Equal(Table(name).Table.DiamondAlong, Table(name).Table.DiamondAcross, 1e-15);

    // Source: WPA, corner 4.5 to 4.625 in and 142 +-1 degrees, side 5 to 5.125 in and 104 +-1 degrees, sights 3 11/16
    // in +-1/8 in.
    [Theory]
    [InlineData("pool-8ft")]
    [InlineData("pool-9ft")]
    public void Pool_tables_have_the_pockets_and_sights_of_the_rules(string name)
    {
        TableSpec table = Table(name).Table;
        Assert.InRange(table.Corner!.Mouth / Inch, 4.5, 4.625);
        Assert.InRange(table.Corner.CutAngle / Degree, 141.0, 143.0);
        Assert.InRange(table.Side!.Mouth / Inch, 5.0, 5.125);
        Assert.InRange(table.Side.CutAngle / Degree, 103.0, 105.0);
        Assert.Equal(3.6875, table.SightSetback / Inch, 0.125);
    }

    // Source: BCA, corner 4 7/8 to 5 1/8 in, side 5 3/8 to 5 5/8 in; shelf 0 to 3/8 in at a side. Shelf at a corner, 1
    // to 2 1/4 in: from memory.
    [Fact]
    public void The_small_pool_table_has_the_wider_pockets_of_the_older_specification()
    {
        TableSpec table = Table("pool-7ft").Table;
        Assert.InRange(table.Corner!.Mouth / Inch, 4.875, 5.125);
        Assert.InRange(table.Side!.Mouth / Inch, 5.375, 5.625);
        Assert.InRange(table.Corner.Shelf / Inch, 1.0, 2.25);
        Assert.InRange(table.Side.Shelf / Inch, 0.0, 0.375);
    }

    // Source: WPA, 2.25 in +-0.005 in, 5.5 to 6 oz; nose 62.5 to 64.5 % of the ball's diameter.
    [Theory]
    [InlineData("pool-7ft")]
    [InlineData("pool-8ft")]
    [InlineData("pool-9ft")]
    public void Pool_balls_and_cushions_fit_the_rules(string name)
    {
        TablePreset preset = Table(name);
        Assert.Equal(2.25, preset.BallSet.Diameter / Inch, 0.005);
        Assert.InRange(preset.BallSet.Mass / Ounce, 5.5, 6.0);
        Assert.InRange(preset.NoseHeight / preset.BallSet.Diameter, 0.625, 0.645);
    }

    // Source: UMB, nose 37 +-1 mm; balls 61 to 61.5 mm and 205 to 220 g (from memory).
    [Fact]
    public void Carom_balls_and_cushions_fit_the_rules()
    {
        TablePreset preset = Table("carom-10ft");
        Assert.InRange(preset.NoseHeight, 0.036, 0.038);
        Assert.InRange(preset.BallSet.Diameter, 0.061, 0.0615);
        Assert.InRange(preset.BallSet.Mass, 0.205, 0.220);
        Assert.Null(preset.Table.Corner);
        Assert.Null(preset.Table.Side);
    }

    // Source: snooker rules, 52.5 +-0.05 mm; 140 to 142 g (from memory); nose at 7/5 of the radius: Mathavan, Jackson
    // and Parkin (2010).
    [Fact]
    public void Snooker_balls_and_cushions_fit_the_rules()
    {
        TablePreset preset = Table("snooker-12ft");
        Assert.Equal(0.0525, preset.BallSet.Diameter, 0.00005);
        Assert.InRange(preset.BallSet.Mass, 0.140, 0.142);
        Assert.Equal(1.4 * 0.5 * preset.BallSet.Diameter, preset.NoseHeight, 1e-12);
    }

    // Source: mu(v) = 0.009951 + 0.108 exp(-1.088 v), Alciatore TP A.28 (2007); the values computed from it, to four
    // decimals.
    [Theory]
    [InlineData(0.0, 0.1180)]
    [InlineData(0.1, 0.1068)]
    [InlineData(0.25, 0.0922)]
    [InlineData(0.5, 0.0726)]
    [InlineData(1.0, 0.0463)]
    [InlineData(2.0, 0.0222)]
    [InlineData(5.0, 0.0104)]
    public void Clean_balls_have_the_published_friction(double slipSpeed, double mu) =>
        Assert.Equal(mu, EquipmentPresets.DefaultBallCondition.Friction.At(slipSpeed), 0.00005);

    // Source: Alciatore, physics FAQ: sliding 0.15 to 0.4, rolling 0.005 to 0.015, spin decay 5 to 15 rad/s^2.
    [Theory]
    [InlineData("new")]
    [InlineData("played-in")]
    [InlineData("worn")]
    [InlineData("damp")]
    public void Every_state_of_a_pool_cloth_keeps_within_the_published_ranges(string state)
    {
        ClothSpec cloth = EquipmentPresets.ClothConditions.Single(c => c.Name == state).Of(Table("pool-9ft").Cloth);
        Assert.InRange(cloth.SlidingFriction, 0.15, 0.4);
        Assert.InRange(cloth.RollingFriction, 0.005, 0.015);
        Assert.InRange(cloth.SpinDecay, 5.0, 15.0);
    }

    // Source: WPA, at most 25 oz and a tip of at most 14 mm; Alciatore, leather 0.71 to 0.75, and 0.6 holds to 0.514 R.
    [Fact]
    public void Cues_fit_the_rules_and_hold_as_a_chalked_leather_tip_does() =>
        Assert.All(EquipmentPresets.Cues, preset =>
        {
            Assert.InRange(preset.Cue.Mass / Ounce, 1.0, 25.0);
            Assert.InRange(preset.Cue.TipDiameter, 0.005, 0.014);
            Assert.InRange(preset.Cue.TipRestitution, 0.71, 0.75);
            Assert.Equal(0.514, TipContact.MiscueLimit(preset.Cue), 0.0005);
        });

    // Source: tangent of squirt over offset at small offsets puts the pivot at R (3.5 + m/m_e)/2.5 behind the ball's
    // centre (derivation); trade figures, from memory: 8 to 20 in, low deflection from 14 in.
    [Fact]
    public void The_cues_pivots_lie_where_the_trade_puts_them()
    {
        double ordinary = PivotInches(EquipmentPresets.Cues.Single(cue => cue.Name == "ordinary").Cue);
        double lowDeflection = PivotInches(EquipmentPresets.Cues.Single(cue => cue.Name == "low-deflection").Cue);
        Assert.InRange(ordinary, 8.0, 14.0);
        Assert.InRange(lowDeflection, 14.0, 20.0);
    }

    [Fact]
    public void Every_name_stands_for_one_thing()
    {
        Assert.All(
            new[]
            {
                EquipmentPresets.Tables.Select(table => table.Name),
                EquipmentPresets.Cues.Select(cue => cue.Name),
                EquipmentPresets.BallConditions.Select(state => state.Name),
                EquipmentPresets.ClothConditions.Select(state => state.Name),
            },
            names => Assert.Distinct(names));
        Assert.Equal("pool-9ft", EquipmentPresets.DefaultTable.Name);
        Assert.Equal("clean", EquipmentPresets.DefaultBallCondition.Name);
        Assert.Equal("played-in", EquipmentPresets.DefaultClothCondition.Name);
        Assert.Equal("ordinary", EquipmentPresets.DefaultCue.Name);
    }

    private static double PivotInches(CueSpec cue)
    {
        BallSetSpec balls = Table("pool-9ft").BallSet;
        return 0.5 * balls.Diameter * (3.5 + balls.Mass / cue.EndMass) / 2.5 / Inch;
    }

    private static TablePreset Table(string name) => EquipmentPresets.Tables.Single(table => table.Name == name);
}
