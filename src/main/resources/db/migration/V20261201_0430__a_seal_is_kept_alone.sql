-- Of a sealed paper the seal alone is kept: the document it stands behind is kept once. Papers sealed before are sealed anew when they are needed.
delete from sealed_paper;
