using System.Runtime.CompilerServices;

namespace Longrail.TestKit.Snapshots;

/// <summary>Compares a text with the file that was approved for a test; says "unchanged", not "right".</summary>
/// <remarks>The approved file stands in Snapshots beside the test. A missing one fails, also for an empty text. With
/// UPDATE_SNAPSHOTS=1 in the environment the text becomes the approved file: look at it before it is
/// committed.</remarks>
public static class Snapshot
{
    /// <summary>Fails unless the text equals the approved file; the text is then kept beside it as
    /// ".received".</summary>
    /// <exception cref="SnapshotDifferenceException">It differs, or there is no approved file.</exception>
    public static void Matches(
        string actual, string extension = "svg", [CallerFilePath] string file = "", [CallerMemberName] string test = "")
    {
        string folder = Path.Combine(Path.GetDirectoryName(file)!, "Snapshots");
        bool update = Environment.GetEnvironmentVariable("UPDATE_SNAPSHOTS") == "1";
        Matches(actual, folder, $"{Path.GetFileNameWithoutExtension(file)}.{test}", extension, update);
    }

    /// <summary>The same for a folder and a name.</summary>
    public static void Matches(string actual, string folder, string name, string extension, bool update)
    {
        string approved = Path.Combine(folder, $"{name}.approved.{extension}");
        string received = Path.Combine(folder, $"{name}.received.{extension}");
        actual = actual.ReplaceLineEndings("\n");
        Directory.CreateDirectory(folder);
        if (update)
            File.WriteAllText(approved, actual);
        if (File.Exists(approved) && File.ReadAllText(approved).ReplaceLineEndings("\n") == actual)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, actual);
        throw new SnapshotDifferenceException($"{name} differs from its approved file.\n  approved: {approved}\n  received: {received}");
    }
}
