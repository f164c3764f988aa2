/** Cuts that strain a sheet, each in its way. */
export const CUTS: Readonly<Record<string, string>> = {
  'one level': `cut 5 "Blink"
time 2+0
A "Nao": 1:20-2:3-1..
`,
  'no level': `cut 6
time 1+1
`,
  'five levels': `cut 31 "Crowd on the quay"
time 5+0
artist "H. Tarn, L. Quoy"
stack BG A B C D E BOOK1 BOOK2
A "figure 1": 1--2-3:1+0 (4-5-)*3 6..
B "figure 2": 1--=--2:20 x:9 3--(4---5---4)<>..
C "figure 3": on 3 1---------2------------3------------4..
D "figure 4": 1..
E "figure 5": x:30 1-2-3-4-5..
voice "Foreman" 1+2..1+20 "Make way there, will you!"
sound 1.. "crowd"
note 2+1 "figure 1 turns to the left, slowly"
note 2+2 "figure 2 turns to the left, slowly"
note 2+3 "figure 3 turns to the left, slowly"
note 2+4 "figure 4 turns to the left, slowly"
note 2+5 "figure 5 turns to the left, slowly"
note 2+6 "figure 6 turns to the left, slowly"
note 2+7 "figure 7 turns to the left, slowly"
note 2+8 "figure 8 turns to the left, slowly"
note 2+9 "figure 9 turns to the left, slowly"
note 2+10 "figure 10 turns to the left, slowly"
note 2+11 "figure 11 turns to the left, slowly"
note 2+12 "figure 12 turns to the left, slowly"
`,
  'twelve levels': `cut 31 "Crowd on the quay"
time 8+3
artist "H. Tarn, L. Quoy"
stack BG A B C D E F G H I J K L BOOK1 BOOK2
A "figure 1": 1--2-3:1+0 (4-5-)*3 6..
B "figure 2": 1--=--2:20 x:9 3--(4---5---4)<>..
C "figure 3": on 3 1---------2------------3------------4..
D "figure 4": 1..
E "figure 5": x:30 1-2-3-4-5..
F "figure 6": on 1 1-----------2---------------3------------4---------------5--------------6..
G "figure 7": 1--2-3:1+0 (4-5-)*3 6..
H "figure 8": 1--=--2:20 x:9 3--(4---5---4)<>..
I "figure 9": on 3 1---------2------------3------------4..
J "figure 10": 1..
K "figure 11": x:30 1-2-3-4-5..
L "figure 12": on 1 1-----------2---------------3------------4---------------5--------------6..
voice "Foreman" 1+2..1+20 "Make way there, will you!"
sound 1.. "crowd"
note 2+1 "figure 1 turns to the left, slowly"
note 2+2 "figure 2 turns to the left, slowly"
note 2+3 "figure 3 turns to the left, slowly"
note 2+4 "figure 4 turns to the left, slowly"
note 2+5 "figure 5 turns to the left, slowly"
note 2+6 "figure 6 turns to the left, slowly"
note 2+7 "figure 7 turns to the left, slowly"
note 2+8 "figure 8 turns to the left, slowly"
note 2+9 "figure 9 turns to the left, slowly"
note 2+10 "figure 10 turns to the left, slowly"
note 2+11 "figure 11 turns to the left, slowly"
note 2+12 "figure 12 turns to the left, slowly"
`,
  'twenty-six levels': `cut 31 "Crowd on the quay"
time 6+1
artist "H. Tarn, L. Quoy"
stack BG A B C D E F G H I J K L M N O P Q R S T U V W X Y Z BOOK1 BOOK2
A "figure 1": 1--2-3:1+0 (4-5-)*3 6..
B "figure 2": 1--=--2:20 x:9 3--(4---5---4)<>..
C "figure 3": on 3 1---------2------------3------------4..
D "figure 4": 1..
E "figure 5": x:30 1-2-3-4-5..
F "figure 6": on 1 1-----------2---------------3------------4---------------5--------------6..
G "figure 7": 1--2-3:1+0 (4-5-)*3 6..
H "figure 8": 1--=--2:20 x:9 3--(4---5---4)<>..
I "figure 9": on 3 1---------2------------3------------4..
J "figure 10": 1..
K "figure 11": x:30 1-2-3-4-5..
L "figure 12": on 1 1-----------2---------------3------------4---------------5--------------6..
M "figure 13": 1--2-3:1+0 (4-5-)*3 6..
N "figure 14": 1--=--2:20 x:9 3--(4---5---4)<>..
O "figure 15": on 3 1---------2------------3------------4..
P "figure 16": 1..
Q "figure 17": x:30 1-2-3-4-5..
R "figure 18": on 1 1-----------2---------------3------------4---------------5--------------6..
S "figure 19": 1--2-3:1+0 (4-5-)*3 6..
T "figure 20": 1--=--2:20 x:9 3--(4---5---4)<>..
U "figure 21": on 3 1---------2------------3------------4..
V "figure 22": 1..
W "figure 23": x:30 1-2-3-4-5..
X "figure 24": on 1 1-----------2---------------3------------4---------------5--------------6..
Y "figure 25": 1--2-3:1+0 (4-5-)*3 6..
Z "figure 26": 1--=--2:20 x:9 3--(4---5---4)<>..
voice "Foreman" 1+2..1+20 "Make way there, will you!"
sound 1.. "crowd"
note 2+1 "figure 1 turns to the left, slowly"
note 2+2 "figure 2 turns to the left, slowly"
note 2+3 "figure 3 turns to the left, slowly"
note 2+4 "figure 4 turns to the left, slowly"
note 2+5 "figure 5 turns to the left, slowly"
note 2+6 "figure 6 turns to the left, slowly"
note 2+7 "figure 7 turns to the left, slowly"
note 2+8 "figure 8 turns to the left, slowly"
note 2+9 "figure 9 turns to the left, slowly"
note 2+10 "figure 10 turns to the left, slowly"
note 2+11 "figure 11 turns to the left, slowly"
note 2+12 "figure 12 turns to the left, slowly"
`,
  japanese: `cut 24A "渡し場の鐘"
time 12+6
artist "汐見ろく"
scene 4
take 2
memo "風は画面左から。綱を引くところまで、口は動かさない。"
memo "ピムの髪は別セル（C）。BOOK1の葦は4コマ打ち。長いメモがここに続きます。霧は画面の端まで、水平線は見せない。夜明け前の青い光で、影は落とさない。前カットの引きの速さに合わせること。"

stack BG A B C BOOK1 D

A "ピム": 1:1+0{late}--=--2:6-3 @61 (4-5-)*6 6:12 7-----8..
B "鐘": 1 @45 (2--3--)<>*4 x:24 1..
C "髪": on 4 (1--2--)..
D "口": on 3 1 @90 2 3 2 3 1 2 3 2 1..

voice "オダ" off 2+12..5+18 "潮が満ちるよ、ピム。「ちょっと」待っておくれ——もう一度だけ、鐘を鳴らすんだ！"
voice "ピム" 6+20..7+8 "いま行くってば！すぐ行くから待っててよ、ねえ聞こえてるの？返事くらいしてよ。"
voice "ピム" mono 8+1..9+12 "きっと" @8+12 "きょうは" @9+1 "コンピューター。"
sound 1+21..2+21 "カーン"
sound 3+1..3+8 "ドアが閉まる"
music 1+1.. "M3 弦、低く"
note 1+21 "綱はここでいっぱい"
note 3+1 "ここから風が強くなる。髪の揺れ幅を倍に。"
note 3+3 "目線を上げる"
note 3+4 "手が綱を離れる"
`,
  words: `cut 2 "Lamp room, night"
time 6+12
artist "J. Marl"
scene 7
memo "Follow the lamp, not the hand."
stack BG A B BOOK1 C
A "Marl": 1:1+0{late}--=--2:6-3 @41 (4-5-)*4 6:12 7-----8..
B "hand": 1 @45 (2--3-2-)*2 x:24 1..
C "lamp": on 3 (1--=--)..
voice "Marl" 2+2..3+20 "Nobody comes up these stairs after dark, you understand?"
voice "Elsbeth" off 4+5..4+20 "I did, yesterday evening, extraordinarily."
voice "Marl" mono 5+2..5+12 "She did come, then. And I never heard a single footstep on the stair."
sound 1+21..2+21 "wind in the shutters"
note 1+21 "lamp flares"
note 3+1 "Hold the breath here until the door is heard; widen the eyes a little."
`,
  'big numbers': `cut 120A "Hundreds"
time 13+0
A "long": on 1 1---------2---------3---------4---------5---------6---------7---------8---------9---------10---------11---------12---------13---------14---------15..
B "nested": ((1-2-)*2 3-)*6 4..
C "keys": on 1 101 102 103 104 105a 106 107a 108 109 110..
BOOK_in_front "a very long name": on 6 1-2-3-4..
voice "Foreman" 1+1..1+6 "Whatever you do, do not let go of that rope before the bell has rung for the third time tonight."
voice "Nao" 1+3..1+9 "I will not!"
voice "Pim" 1+4..2+9 "Extraordinarily unhelpful."
sound 1..1+3 "rope, wet, over the edge of the jetty"
sound 1+4..3+0 "bell"
music 1.. "M3"
`,
  'long memo': `cut 9 "Words"
time 1+0
memo "0: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "1: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "2: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "3: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "4: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "5: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "6: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "7: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "8: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "9: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "10: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "11: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "12: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
memo "13: Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. Keep the lantern light on the left of every face, and the mist to the edge of the picture. "
A: 1..
`,
};
