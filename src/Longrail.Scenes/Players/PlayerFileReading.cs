namespace Longrail.Scenes.Players;

/// <summary>What came of reading a player file: what it says, or what is wrong with it.</summary>
/// <param name="Player">What it says; null if anything is wrong.</param>
/// <param name="Errors">What is wrong; empty if nothing is.</param>
public sealed record PlayerFileReading(PlayerFile? Player, IReadOnlyList<SceneError> Errors);
