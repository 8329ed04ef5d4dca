namespace Longrail.Physics.Equipment;

/// <summary>A named cue.</summary>
/// <param name="Name">The name by which a scene asks for it.</param>
/// <param name="Cue">The cue.</param>
public sealed record CuePreset(string Name, CueSpec Cue);
