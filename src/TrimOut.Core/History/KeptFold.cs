using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>What a history makes, as bytes to be kept beside it, so that it need not be worked out again.</summary>
/// <remarks>
/// Never more than a copy: whoever keeps it makes sure that it is of the very history and of the very program, and throws it away else.
/// Values are kept in their stored form. Texts stand once and are named by their number, for most of them come often.
/// </remarks>
public static class KeptFold
{
    private const int NoText = -1;

    /// <summary>The program that writes and reads these bytes; another one's are not read.</summary>
    public static Guid Program { get; } = typeof(KeptFold).Module.ModuleVersionId;

    /// <summary>The bytes for a log.</summary>
    /// <param name="log">The log.</param>
    /// <returns>The bytes; null where something in the history does not count, which whoever opens it is to be told each time.</returns>
    public static byte[]? Write(HouseLog log)
    {
        if (log.Changes.IsEmpty || !NotCounted.Of(log).IsEmpty)
            return null;
        var texts = new Texts();
        using var body = new MemoryStream();
        using (var to = new BinaryWriter(body, Encoding.UTF8, leaveOpen: true))
        {
            to.Write7BitEncodedInt64(log.Last!.Value.Stamp);
            Write(log.Last.Value.Id);
            Each(log.Seen.Last.ToList(), Write);
            Each(log.Undone.ToList(), u =>
            {
                Write(u.Key);
                Write(u.Value);
            });
            Each(log.Added.Where(a => log.House.Items.Find(a) is null).ToList(), WriteText);
            Each(log.House.Items.Values.ToList(), item =>
            {
                WriteText(item.Id);
                to.Write7BitEncodedInt((int)item.Kind);
                WriteText(item.Under);
                Each(item.Fields.ToList(), field =>
                {
                    WriteText(field.Key);
                    Each(field.Value, head => Each(FromFirst(head), WriteHead));
                });
            });

            void Each<T>(IReadOnlyList<T> all, Action<T> write)
            {
                to.Write7BitEncodedInt(all.Count);
                foreach (var one in all)
                    write(one);
            }

            void WriteHead(Head head)
            {
                Write(head.Id);
                to.Write7BitEncodedInt64(head.Stamp);
                WriteText(head.Stored);
                WriteText(head.By);
                to.Write(head.At.Ticks);
                to.Write((short)head.At.TotalOffsetMinutes);
            }

            void Write(ChangeId id)
            {
                WriteText(id.Device);
                to.Write7BitEncodedInt64(id.Sequence);
            }

            void WriteText(string? text) => to.Write7BitEncodedInt(text is null ? NoText : texts.NumberOf(text));
        }
        using var whole = new MemoryStream();
        using (var to = new BinaryWriter(whole, Encoding.UTF8, leaveOpen: true))
        {
            to.Write7BitEncodedInt(texts.All.Count);
            foreach (var text in texts.All)
                to.Write(text);
            to.Write(body.ToArray());
        }
        return whole.ToArray();
    }

    /// <summary>The log of such bytes.</summary>
    /// <param name="bytes">What <see cref="Write"/> of the same program made, known to be whole.</param>
    /// <param name="changes">Reads the changes that it was made of, for whoever asks for one of them.</param>
    public static HouseLog Read(byte[] bytes, Func<IReadOnlyList<Change>> changes)
    {
        using var from = new BinaryReader(new MemoryStream(bytes, writable: false), Encoding.UTF8);
        var texts = new string[from.Read7BitEncodedInt()];
        for (var at = 0; at < texts.Length; at++)
            texts[at] = from.ReadString();
        var last = (from.Read7BitEncodedInt64(), Id());
        var seen = Seen.Of(Each(Id));
        var undone = Each(() => KeyValuePair.Create(Id(), Id())).ToFrozenDictionary();
        var takenBack = Each(() => Text()!);
        var values = new Dictionary<(Fact, int), object?>();
        var facts = new Dictionary<(ItemKind, int), Fact?>();
        var place = 0;
        var items = Each(() =>
        {
            var empty = new Item(Text()!, (ItemKind)from.Read7BitEncodedInt(), Text()!, place++);
            return Item.Of(empty, Each(() => Field(empty.Kind)));
        });
        return new HouseLog(new FoldedChanges(last, seen, takenBack, changes), undone, new House(new ItemTable(items)));

        ImmutableArray<T> Each<T>(Func<T> read)
        {
            var all = ImmutableArray.CreateBuilder<T>(from.Read7BitEncodedInt());
            while (all.Count < all.Capacity)
                all.Add(read());
            return all.MoveToImmutable();
        }

        string? Text() => from.Read7BitEncodedInt() is not NoText and var number ? texts[number] : null;

        ChangeId Id() => new(Text()!, from.Read7BitEncodedInt64());

        KeyValuePair<string, ImmutableArray<Head>> Field(ItemKind kind)
        {
            var number = from.Read7BitEncodedInt();
            if (!facts.TryGetValue((kind, number), out var fact))
                facts.Add((kind, number), fact = FactTable.Find(kind, texts[number]));
            return KeyValuePair.Create(texts[number], Each(() =>
            {
                Head? head = null;
                for (var left = from.Read7BitEncodedInt(); left > 0; left--)
                    head = HeadOver(head, fact);
                return head!;
            }));
        }

        Head HeadOver(Head? before, Fact? fact)
        {
            var (id, stamp, stored, by) = (Id(), from.Read7BitEncodedInt64(), from.Read7BitEncodedInt(), Text()!);
            var at = new DateTimeOffset(from.ReadInt64(), TimeSpan.FromMinutes(from.ReadInt16()));
            return new Head(id, stored == NoText ? null : texts[stored], Value(fact, stored), by, at) { Stamp = stamp, Before = before };
        }

        // The same value of the same fact comes often, and what it is decoded to never changes.
        object? Value(Fact? fact, int stored)
        {
            if (fact is null || stored == NoText)
                return null;
            if (!values.TryGetValue((fact, stored), out var value))
                values.Add((fact, stored), value = Fold.ValueOf(fact, texts[stored]));
            return value;
        }
    }

    /// <summary>A value and those before it that are kept, the first of them first.</summary>
    private static List<Head> FromFirst(Head head)
    {
        var all = new List<Head>();
        for (var one = head; one is not null; one = one.Before)
            all.Add(one);
        all.Reverse();
        return all;
    }

    private sealed class Texts
    {
        private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);

        public List<string> All { get; } = [];

        public int NumberOf(string text)
        {
            if (_numbers.TryAdd(text, All.Count))
                All.Add(text);
            return _numbers[text];
        }
    }
}
