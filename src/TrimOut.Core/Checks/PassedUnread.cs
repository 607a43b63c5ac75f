using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>
/// A check that finds nothing wrong, and rests on values of makers' sheets that nobody checked: it is no pass yet, for another value may be a stop.
/// </summary>
/// <param name="Check">The check.</param>
/// <param name="Subject">The item that it is about.</param>
/// <param name="Values">The values that it read and nobody checked, each once, as fields of their parts.</param>
/// <param name="Passed">How often the rule holds by them; 0 where they say that it does not apply.</param>
public sealed record PassedUnread(CheckInfo Check, Item Subject, ImmutableArray<FieldRef> Values, int Passed);
