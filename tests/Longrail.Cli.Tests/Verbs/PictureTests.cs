using System.Text;

namespace Longrail.Cli.Tests.Verbs;

public sealed class PictureTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-pictures-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // The first bytes are those of the formats' own standards: XML of SVG, ISO/IEC 15948 (PNG), ISO 32000 (PDF).
    [Theory]
    [InlineData("bank.svg", "<")]
    [InlineData("bank.png", "\u0089PNG\r\n\u001a\n")]
    [InlineData("bank.pdf", "%PDF-")]
    public void A_picture_is_drawn_in_the_form_that_its_name_asks_for(string name, string start)
    {
        string path = Path.Combine(_folder, name);
        CliRun run = CliRun.Of("", "shoot", CliRun.Scene("straight-bank-centre.json"), "--picture", path);
        Assert.Equal((ExitCode.Done, ""), (run.ExitCode, run.Error));
        Assert.NotEmpty(run.Output);
        Assert.StartsWith(start, Encoding.Latin1.GetString(File.ReadAllBytes(path)), StringComparison.Ordinal);
        Assert.Equal([path], Directory.EnumerateFiles(_folder));
    }

    [Theory]
    [InlineData("bank.jpg", ".svg, .png or .pdf")]
    [InlineData("bank", ".svg, .png or .pdf")]
    [InlineData("no-such-folder/bank.svg", "no folder")]
    public void A_picture_that_cannot_be_written_is_refused_before_anything_is_played(string name, string told)
    {
        CliRun run = CliRun.Of("", "shoot", "no-such-scene.json", "--picture", Path.Combine(_folder, name));
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains("--picture", run.Error);
        Assert.Contains(told, run.Error);
        Assert.DoesNotContain("no-such-scene", run.Error);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
    }

    [Fact]
    public void A_picture_over_a_folder_leaves_nothing_behind()
    {
        string path = Path.Combine(_folder, "bank.svg");
        Directory.CreateDirectory(path);
        CliRun run = CliRun.Of("", "shoot", CliRun.Scene("bank-alone-firm.json"), "--picture", path);
        Assert.Equal(ExitCode.Failed, run.ExitCode);
        Assert.Contains("bank.svg", run.Error);
        Assert.Empty(run.Output);
        Assert.Equal([path], Directory.EnumerateFileSystemEntries(_folder));
    }

    [Fact]
    public void A_scene_with_an_error_draws_nothing()
    {
        string path = Path.Combine(_folder, "bank.svg");
        Assert.Equal(ExitCode.BadInput, CliRun.Of("{", "shoot", "-", "--picture", path).ExitCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
    }
}
