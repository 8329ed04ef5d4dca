namespace Longrail.Scenes.Players;

/// <summary>How steady a player is, in four steps.</summary>
public enum PlayerLevel
{
    /// <summary>Has played for weeks.</summary>
    Beginner,

    /// <summary>Plays every week in a club.</summary>
    Club,

    /// <summary>Wins in a club and plays for a county.</summary>
    County,

    /// <summary>Plays for a country, or for a living.</summary>
    National,
}
