// The peer of every build kind: a program that prints one line and ends.
System.Console.WriteLine("one line");
