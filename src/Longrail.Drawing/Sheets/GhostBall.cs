namespace Longrail.Drawing.Sheets;

/// <summary>Striker and struck ball at the moment of contact.</summary>
/// <param name="Striker">Index of the striker.</param>
/// <param name="StrikerAt">Its centre.</param>
/// <param name="Struck">Index of the struck ball.</param>
/// <param name="StruckAt">Its centre.</param>
internal sealed record GhostBall(int Striker, TablePoint StrikerAt, int Struck, TablePoint StruckAt);
