using System.Text;
using TrimOut.HouseFile.Backups;

namespace TrimOut.Tests.Campaign;

/// <summary>What lies beside a house and in the user's own folder: none of it may cost a house anything, whatever is in it.</summary>
internal static class SideFiles
{
    /// <summary>What is in them is the same each time, whatever the folder of the campaign is called.</summary>
    public static IReadOnlyList<string> Names { get; } = ["settings", "papers-list", "backup", "fault-note", "in-use", "lock", "new", "journal-new", "unread",
        "paper"];

    private static readonly DateTime Day = new(2026, 3, 4, 8, 0, 0, DateTimeKind.Utc);

    /// <summary>What is in one of them when all is well.</summary>
    public static byte[] Of(string name, Scene scene) => name switch
    {
        "settings" => Encoding.UTF8.GetBytes("""{"look":"plain","recent":["/stick/elm.trimout"],"backups":null}"""),
        "papers-list" => Encoding.UTF8.GetBytes($"{new string('a', 64)} /stick/papers/h-binder.md\n{new string('b', 64)} /stick/papers/h-binder.html\n"),
        "backup" => ClosedOf(scene).File,
        "fault-note" => Encoding.UTF8.GetBytes("What went wrong, without anything about the house.\n"),
        "in-use" => Encoding.UTF8.GetBytes("Ash on laptop, program number 7, since 2026-03-04 08:00\n"),
        "lock" => "lock"u8.ToArray(),
        "new" => scene.Now.File,
        "journal-new" or "unread" => scene.Now.Journal!,
        _ => Encoding.UTF8.GetBytes("# A paper that somebody wrote\n"),
    };

    /// <summary>Where one of them lies.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="house">The house file.</param>
    /// <param name="own">The user's own folder.</param>
    public static string PlaceOf(string name, string house, string own) => name switch
    {
        "settings" => Path.Combine(own, "settings.json"),
        "papers-list" => Path.Combine(own, "papers-written"),
        "backup" => Path.Combine(own, "backups", "h-00000001", Backup.NameOf(Day, 7, "2" + new string('s', 22))),
        "fault-note" => Path.Combine(own, "fault-20260304-080000.txt"),
        "in-use" => house + ".in-use",
        "lock" => house + ".lock",
        "new" => house + ".new",
        "journal-new" => house + ".journal.new",
        "unread" => house + ".unread-20260304-080000",
        _ => Path.Combine(Path.GetDirectoryName(house)!, "papers", "h-binder.md"),
    };

    private static Pair ClosedOf(Scene scene) => scene.Older.First(p => p.Journal is null);
}
