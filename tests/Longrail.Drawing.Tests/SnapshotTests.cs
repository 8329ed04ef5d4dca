using Longrail.TestKit.Snapshots;

namespace Longrail.Drawing.Tests;

/// <summary>The helper itself must be able to fail.</summary>
public sealed class SnapshotTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("longrail-snapshots-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_missing_approved_file_fails_also_for_an_empty_text()
    {
        Assert.Throws<SnapshotDifferenceException>(() => Snapshot.Matches("", _folder, "new", "svg", update: false));
        Assert.True(File.Exists(Path.Combine(_folder, "new.received.svg")));
    }

    [Fact]
    public void A_difference_of_one_letter_fails_and_is_kept_beside_the_approved_file()
    {
        File.WriteAllText(Path.Combine(_folder, "one.approved.svg"), "<svg/>\n");

        SnapshotDifferenceException e = Assert.Throws<SnapshotDifferenceException>(
            () => Snapshot.Matches("<svG/>\n", _folder, "one", "svg", update: false));

        Assert.Contains("one.received.svg", e.Message, StringComparison.Ordinal);
        Assert.Equal("<svG/>\n", File.ReadAllText(Path.Combine(_folder, "one.received.svg")));
    }

    [Fact]
    public void The_same_text_passes_and_clears_what_was_received_before()
    {
        File.WriteAllText(Path.Combine(_folder, "one.approved.svg"), "<svg/>\r\n");
        File.WriteAllText(Path.Combine(_folder, "one.received.svg"), "old");

        Snapshot.Matches("<svg/>\n", _folder, "one", "svg", update: false);

        Assert.False(File.Exists(Path.Combine(_folder, "one.received.svg")));
    }

    [Fact]
    public void Updating_approves_the_text()
    {
        Snapshot.Matches("<svg/>\n", _folder, "one", "svg", update: true);
        Snapshot.Matches("<svg/>\n", _folder, "one", "svg", update: false);
    }
}
