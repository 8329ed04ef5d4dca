using Longrail.Drawing.Sheets;
namespace Longrail.Drawing.Tests;
public class Scratch
{
    [Fact] public void Draws()
    {
        Directory.CreateDirectory("/tmp/lr/pics");
        string s = ShotSheet.Draw(SyntheticShot.StraightBank());
        PictureFile.Save(s, "/tmp/lr/pics/a.svg"); PictureFile.Save(s, "/tmp/lr/pics/a.png"); PictureFile.Save(s, "/tmp/lr/pics/a.pdf");
        string c = ShotSheet.Draw(SyntheticShot.StraightBank(SyntheticShot.Carom, "A very long title that somebody typed in because they wanted to describe the whole shot including the weather of the day and what they had for lunch"));
        PictureFile.Save(c, "/tmp/lr/pics/c.png");
        PictureFile.Save(ContrastSheet.Draw(SyntheticContrast.Speeds(3)), "/tmp/lr/pics/k3.png");
        PictureFile.Save(ContrastSheet.Draw(SyntheticContrast.Speeds(3)), "/tmp/lr/pics/k3.svg");
        PictureFile.Save(ContrastSheet.Draw(SyntheticContrast.Speeds(9, null, true)), "/tmp/lr/pics/k9.png");
    }
}
