// A third of the classes wait: for a browser, for a process, for a lock that is held on purpose. Others run meanwhile.
[assembly: CollectionBehavior(MaxParallelThreads = 3)]
