using System.Globalization;
using TrimOut.Core;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Tests.Crashes;

namespace TrimOut.HouseFile.Tests.Systems;

/// <summary>A disk in memory with the manners of macOS.</summary>
/// <remarks>
/// Names that differ by case, or by how their accents are written, are one, and stay as they were first written (Apple, APFS guide: "normalization-preserving,
/// but not normalization-sensitive", the case-insensitive variant). A file is renamed over one that is open, and a deleted one goes on for whoever has it open,
/// as everywhere under Unix. A name is held by flock(2), which another program, or this one through another handle, is refused (.NET, FileShare.None).
/// The Finder gives a copy the day of what it copied, but another number. .NET does not say which file a name leads to, so only the name is looked for.
/// What fsync(2) brings to the drive may be lost all the same; see <see cref="FolderFlush"/>.
/// </remarks>
internal sealed class MacFiles(DiskState? state = null) : RecordingFiles(state, Names)
{
    private readonly HashSet<string> _locks = new(Names);
    private readonly Dictionary<int, int> _days = [];

    private static StringComparer Names { get; } = new AccentsAndCase();

    public override IDisposable? TryHold(string path) => _locks.Add(path) ? new Letting(() => _locks.Remove(path)) : null;

    public override IHeldName Hold(string path, bool isOpen) => new NameAlone(this, path);

    /// <summary>As getattrlist(2) answers: the day, and the number.</summary>
    public override string? BirthOf(string path) => NumberOf(path) is { } file ? $"{DayOf(file)}.000000000-{file}" : null;

    /// <summary>Copies a file as the Finder does, over another one where there is one.</summary>
    public void CopyAsTheFinderDoes(string from, string to)
    {
        var day = DayOf(NumberOf(from)!.Value);
        var bytes = Read(from);
        Delete(to);
        using (var copy = Create(to))
            copy.Write(0, bytes);
        _days[NumberOf(to)!.Value] = day;
    }

    private int DayOf(int file) => _days.TryGetValue(file, out var day) ? day : file;

    private int? NumberOf(string path) => base.BirthOf(path) is { } number ? int.Parse(number, CultureInfo.InvariantCulture) : null;

    private sealed class Letting(Action go) : IDisposable
    {
        public void Dispose() => go();
    }

    private sealed class NameAlone(MacFiles disk, string path) : IHeldName
    {
        public bool StillLeadsThere => disk.Exists(path);

        public void Dispose() { }
    }

    private sealed class AccentsAndCase : StringComparer
    {
        public override int Compare(string? x, string? y) => OrdinalIgnoreCase.Compare(Key(x), Key(y));

        public override bool Equals(string? x, string? y) => OrdinalIgnoreCase.Equals(Key(x), Key(y));

        public override int GetHashCode(string obj) => OrdinalIgnoreCase.GetHashCode(Key(obj)!);

        private static string? Key(string? name) => name is null ? null : ComposedText.Of(name);
    }
}
