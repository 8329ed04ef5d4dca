using Longrail.Physics.Equipment;
using Longrail.Scenes.Parts;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Compiling;

/// <summary>Fills in the equipment of a scene.</summary>
internal static class EquipmentCompiler
{
    /// <summary>The highest nose that a ball may have, over its diameter. The lowest is 0.5: below the centre a cushion
    /// would lift the ball instead of holding it down, and a nose near the top would close over it.</summary>
    public const double HighestNose = 0.9;

    /// <summary>The equipment with every default filled in; what is wrong goes to the errors.</summary>
    public static EquipmentSpec Compile(Scene scene, SceneErrors errors)
    {
        TablePreset preset = Preset(scene.Table);
        ClothCondition condition = ClothCondition(scene.Cloth);
        BallSetSpec balls = BallSet(scene.BallSet, preset.BallSet);
        return new EquipmentSpec(
            Table(scene.Table, preset.Table),
            Cloth(scene.Cloth, condition.Of(preset.Cloth)),
            Cushion(scene.Cushion, preset, condition, balls.Diameter, errors),
            balls,
            Cue(scene.Cue));
    }

    /// <summary>The table preset that a scene asks for.</summary>
    public static TablePreset Preset(SceneTable? table) =>
        Find(EquipmentPresets.Tables, table?.Preset, preset => preset.Name, EquipmentPresets.DefaultTable);

    /// <summary>The state of the cloth that a scene asks for.</summary>
    public static ClothCondition ClothCondition(SceneCloth? cloth) => Find(
        EquipmentPresets.ClothConditions, cloth?.State, state => state.Name, EquipmentPresets.DefaultClothCondition);

    /// <summary>The state of the balls that a scene asks for.</summary>
    public static BallCondition BallCondition(SceneBallSet? balls) =>
        Find(EquipmentPresets.BallConditions, balls?.State, state => state.Name, EquipmentPresets.DefaultBallCondition);

    /// <summary>The cue that a scene asks for.</summary>
    public static CuePreset CuePreset(SceneCue? cue) =>
        Find(EquipmentPresets.Cues, cue?.Preset, preset => preset.Name, EquipmentPresets.DefaultCue);

    private static TableSpec Table(SceneTable? table, TableSpec preset)
    {
        if (table is null)
            return preset;
        (PocketSpec? corner, PocketSpec? side) = Pockets(table.Pockets, preset);
        return new TableSpec(
            Of(table.Length, preset.Length),
            Of(table.Width, preset.Width),
            corner,
            side,
            Of(table.SightSetback, preset.SightSetback),
            Of(table.Gravity, preset.Gravity));
    }

    private static (PocketSpec? Corner, PocketSpec? Side) Pockets(ScenePockets? pockets, TableSpec preset)
    {
        if (pockets is null || pockets.Word == ScenePockets.Standard)
            return (preset.Corner, preset.Side);
        if (pockets.Word == ScenePockets.None)
            return (null, null);
        TableSpec standard = preset.Corner is null ? EquipmentPresets.DefaultTable.Table : preset;
        return (Pocket(pockets.Corner, standard.Corner!), Pocket(pockets.Side, standard.Side!));
    }

    private static PocketSpec Pocket(ScenePocket? pocket, PocketSpec standard)
    {
        if (pocket is null)
            return standard;
        double dropRadius = pocket.Mouth is { } mouth ? 0.5 * mouth.Value : standard.DropRadius;
        return new PocketSpec(
            Of(pocket.Mouth, standard.Mouth),
            Of(pocket.CutAngle, standard.CutAngle),
            Of(pocket.JawRadius, standard.JawRadius),
            Of(pocket.Shelf, standard.Shelf),
            Of(pocket.DropRadius, dropRadius));
    }

    private static ClothSpec Cloth(SceneCloth? cloth, ClothSpec standard) => cloth is null
        ? standard
        : new ClothSpec(
            Of(cloth.SlidingFriction, standard.SlidingFriction),
            Of(cloth.RollingFriction, standard.RollingFriction),
            Of(cloth.SpinDecay, standard.SpinDecay));

    private static CushionSpec Cushion(
        SceneCushion? cushion, TablePreset preset, ClothCondition cloth, double ballDiameter, SceneErrors errors)
    {
        CushionSpec standard = EquipmentPresets.Cushion(preset.NoseHeight);
        double noseHeight = cushion?.NoseHeight switch
        {
            null => standard.NoseHeight,
            { Unit: RelativeUnit.BallDiameter } part => part.Value * ballDiameter,
            { Unit: RelativeUnit.BallRadius } part => part.Value * 0.5 * ballDiameter,
            { } metres => metres.Value,
        };
        if (!(noseHeight >= 0.5 * ballDiameter && noseHeight < HighestNose * ballDiameter))
        {
            string nose = SceneErrors.Millimetres(noseHeight);
            string ball = SceneErrors.Millimetres(ballDiameter);
            string least = SceneErrors.Millimetres(0.5 * ballDiameter);
            string most = SceneErrors.Millimetres(HighestNose * ballDiameter);
            errors.Add(
                "cushion.noseHeight",
                $"a nose {nose} high does not fit a ball of {ball}",
                $"from {least} to less than {most}");
        }

        return new CushionSpec(
            cushion?.Law == "impulse" ? CushionLaw.Impulse : standard.Law,
            Of(cushion?.Restitution, standard.Restitution),
            Of(cushion?.Friction, standard.Friction * cloth.CushionFriction),
            noseHeight,
            Of(cushion?.ContactTime, standard.ContactTime));
    }

    private static BallSetSpec BallSet(SceneBallSet? balls, BallSetSpec standard)
    {
        if (balls is null)
            return standard;
        BallFriction friction = BallCondition(balls).Friction;
        return new BallSetSpec(
            Of(balls.Diameter, standard.Diameter),
            Of(balls.Mass, standard.Mass),
            Of(balls.Restitution, standard.Restitution),
            balls.Friction is not { } given
                ? friction
                : new BallFriction(
                    Of(given.Base, friction.Base),
                    Of(given.Gain, friction.Gain),
                    Of(given.Decay, friction.Decay)));
    }

    private static CueSpec Cue(SceneCue? cue)
    {
        CueSpec standard = CuePreset(cue).Cue;
        return cue is null
            ? standard
            : new CueSpec(
                Of(cue.Mass, standard.Mass),
                Of(cue.TipDiameter, standard.TipDiameter),
                Of(cue.TipRadius, standard.TipRadius),
                Of(cue.EndMass, standard.EndMass),
                Of(cue.TipRestitution, standard.TipRestitution),
                Of(cue.TipFriction, standard.TipFriction));
    }

    private static double Of(Quantity? quantity, double standard) => quantity?.Value ?? standard;

    private static T Find<T>(IReadOnlyList<T> presets, string? name, Func<T, string> nameOf, T standard)
    {
        // The reader let only known names pass.
        for (int i = 0; name is not null && i < presets.Count; i++)
        {
            if (nameOf(presets[i]) == name)
                return presets[i];
        }

        return standard;
    }
}
