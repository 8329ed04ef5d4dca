using Longrail.Scenes.Fields;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Players;

/// <summary>The catalogue of all fields of a player file. Reader, writer and schema follow it.</summary>
internal static class PlayerFields
{
    private const double Degree = Math.PI / 180;
    private const string AsPreset = "as the preset";

    internal static Section<PlayerFile> Root { get; } = new(
        new WordField<PlayerFile>(
            "longrail", [PlayerFile.Format], p => p.FormatName, (p, v) => p.FormatName = v,
            PlayerFile.Format, "The format of this file."),
        new TextField<PlayerFile>(
            "name", p => p.Name, (p, v) => p.Name = v, "the preset's name",
            "What the player is called; a pseudonym will do."),
        new TextField<PlayerFile>("notes", p => p.Notes, (p, v) => p.Notes = v, null, "Remarks for people."),
        new WordField<PlayerFile>(
            "preset", [.. PlayerWords.Levels],
            p => p.Preset is { } level ? PlayerWords.Of(level) : null,
            (p, v) => p.Preset = v is null ? null : PlayerWords.Level(v),
            "club", "The level whose error sizes stand for those that are not given."),
        new NumberField<PlayerFile>(
            "aim", QuantityKind.Angle, UpTo(10 * Degree, "10 deg"), p => p.Aim, (p, v) => p.Aim = v,
            AsPreset, "Standard deviation of the stick's direction."),
        new NumberField<PlayerFile>(
            "speed", QuantityKind.Ratio, UpTo(0.5, "50 %"), p => p.Speed, (p, v) => p.Speed = v,
            AsPreset, "Standard deviation of the speed, as a part of the speed meant."),
        new PartField<PlayerFile, PlayerTip>(
            "tip", Tip, p => p.Tip, (p, v) => p.Tip = v, AsPreset, "Where tip and ball touch."),
        new NumberField<PlayerFile>(
            "elevation", QuantityKind.Angle, UpTo(20 * Degree, "20 deg"), p => p.Elevation, (p, v) => p.Elevation = v,
            AsPreset, "Standard deviation of the stick's angle to the bed."));

    private static Section<PlayerTip> Tip => new(
        new NumberField<PlayerTip>(
            "across", QuantityKind.Length, UpTo(0.02, "20 mm"), t => t.Across, (t, v) => t.Across = v,
            AsPreset, "Standard deviation of the point of contact to the side."),
        new NumberField<PlayerTip>(
            "up", QuantityKind.Length, UpTo(0.02, "20 mm"), t => t.Up, (t, v) => t.Up = v,
            AsPreset, "Standard deviation of the point of contact up and down."));

    /// <summary>The path of a field of that name within the tip.</summary>
    internal static string? PathEndingIn(string name) =>
        Tip.Fields.Any(field => field.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) ? $"tip.{name}" : null;

    private static NumberRange UpTo(double most, string words) =>
        new(0, most, Words: $"the size of an error, from 0 to {words}");
}
