// One browser at a time: several at once starve each other on a small machine.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
