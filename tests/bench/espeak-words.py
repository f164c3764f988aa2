"""Speaks lines with the installed eSpeak NG library and writes what it says of its own times.

Reads JSON lines {"id", "voice", "speed", "pitch", "text"} from standard input; writes ID.wav (16 bits, mono) into the folder of the
first argument, and to standard output a JSON line {"id", "rate", "words": [{"at": characters, "length", "ms"}],
"phonemes": [{"name", "ms"}]}. The library tells words and phonemes by events (speak_lib.h). Leaves with 3 where there is no library.
"""

import ctypes
import ctypes.util
import json
import os
import sys
import wave

WORD, END, PHONEME = 1, 5, 7


class Id(ctypes.Union):
    _fields_ = [("number", ctypes.c_int), ("name", ctypes.c_char_p), ("string", ctypes.c_char * 8)]


class Event(ctypes.Structure):
    _fields_ = [
        ("type", ctypes.c_int),
        ("unique_identifier", ctypes.c_uint),
        ("text_position", ctypes.c_int),
        ("length", ctypes.c_int),
        ("audio_position", ctypes.c_int),
        ("sample", ctypes.c_int),
        ("user_data", ctypes.c_void_p),
        ("id", Id),
    ]


CALLBACK = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.POINTER(Event))


def main(folder):
    name = ctypes.util.find_library("espeak-ng")
    if name is None:
        sys.exit(3)
    library = ctypes.CDLL(name)
    # Synchronous, with phoneme events.
    rate = library.espeak_Initialize(2, 500, None, 1)
    if rate <= 0:
        sys.exit(3)
    state = {}

    def heard(samples, count, events):
        if samples and count > 0:
            state["pcm"] += ctypes.string_at(samples, count * 2)
        i = 0
        while events[i].type != 0:
            event = events[i]
            if event.type == WORD:
                word = {"at": event.text_position - 1, "length": event.length, "ms": event.audio_position}
                state["words"].append(word)
            elif event.type == PHONEME:
                text = event.id.string.decode("utf-8", "replace")
                state["phonemes"].append({"name": text, "ms": event.audio_position})
            i += 1
        return 0

    callback = CALLBACK(heard)
    library.espeak_SetSynthCallback(callback)
    for line in sys.stdin:
        job = json.loads(line)
        state.update(pcm=b"", words=[], phonemes=[])
        if library.espeak_SetVoiceByName(job["voice"].encode()) != 0:
            sys.exit("no voice " + job["voice"])
        library.espeak_SetParameter(1, job["speed"], 0)
        library.espeak_SetParameter(3, job.get("pitch", 50), 0)
        text = job["text"].encode("utf-8")
        library.espeak_Synth(text, len(text) + 1, 0, 1, 0, 1, None, None)
        library.espeak_Synchronize()
        with wave.open(os.path.join(folder, job["id"] + ".wav"), "wb") as out:
            out.setnchannels(1)
            out.setsampwidth(2)
            out.setframerate(rate)
            out.writeframes(state["pcm"])
        print(json.dumps({"id": job["id"], "rate": rate, "words": state["words"], "phonemes": state["phonemes"]}))


main(sys.argv[1])
