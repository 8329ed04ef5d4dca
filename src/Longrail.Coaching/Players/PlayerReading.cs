using Longrail.Scenes;

namespace Longrail.Coaching.Players;

/// <summary>What came of reading a player: the player, or what is wrong with the file.</summary>
/// <param name="Player">The player; null if anything is wrong.</param>
/// <param name="Errors">What is wrong; empty if nothing is.</param>
public sealed record PlayerReading(Player? Player, IReadOnlyList<SceneError> Errors);
